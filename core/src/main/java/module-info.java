/// The five stages of the work on an older wooden building, and the measures beneath them. No file, clock, thread or
/// network is touched here: what comes in is handed in, what goes out is returned.
module sillwright.core {
    exports sillwright;
    exports sillwright.measure;
    exports sillwright.walk;
    exports sillwright.water;
    exports sillwright.water.net;
    exports sillwright.wood;
    exports sillwright.wood.drying;
    exports sillwright.wood.moisture;
    exports sillwright.wood.strength;
    exports sillwright.wood.weather;
    exports sillwright.work;
    exports sillwright.work.cost;
    exports sillwright.work.joint;
    exports sillwright.work.resin;
    exports sillwright.work.stock;
    exports sillwright.work.schedule;
    exports sillwright.watch;
    exports sillwright.watch.trend;
    exports sillwright.watch.budget;
}
