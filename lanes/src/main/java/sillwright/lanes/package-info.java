/// How is moisture moved as fast as this machine can? The vector unit's way of [sillwright.wood.drying.Transport], apart from the core, which must also run where that unit
/// cannot be spoken to. In and out: as there. Read first: [Lanes].
package sillwright.lanes;
