package sillwright.page;

import java.util.List;

/// One stage's page: the parts it is made of, in order.
interface StagePage {
    /// @param memory parts that show the same as before are not drawn again
    List<Part> parts(Desk.Opened open, Remembered memory);

    /// The question that the stage answers.
    String question();

    static StagePage of(String stage) {
        return switch (stage) {
            case "walk" -> new WalkPage();
            case "water" -> new WaterPage();
            case "wood" -> new WoodPage();
            case "work" -> new WorkPage();
            case "watch" -> new WatchPage();
            default -> throw Refusal.notThere(stage, "there is no such stage", "use one of " + String.join(", ", Frame.STAGES));
        };
    }
}
