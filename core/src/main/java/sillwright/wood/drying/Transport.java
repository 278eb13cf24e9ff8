package sillwright.wood.drying;

/// Moves moisture through the pieces of a stack, hour by hour.
///
/// Conservative finite volumes, implicit in time. What one slice gives, the next takes, so no water is lost; the coefficient
/// between two slices is taken from the hour before, as the mean of D over the moistures that lie between the two (the difference of the
/// sums of D up to each, over their distance), so a wet core behind a dry shell gives off no more than the shell lets through. The matrix is that of a diffusion step: no length of step makes it swing,
/// and no slice leaves the bounds set by its neighbours and the air.
///
/// D below fibre saturation: bound · exp(rise · u), quicker when warm. Above: free · s³, s the share of the room for free water that
/// is filled; the walls then hold all they can, and bound water does not move.
///
/// Sources: the scheme is a standard of numerical texts; D and the surface coefficient rise alike with moisture in Hanhijärvi (1995) (both
/// from memory). The cube of s is this program's own choice: it takes up water with the square root of time.
@FunctionalInterface
public interface Transport {
    /// Takes pieces `fromPiece` to less than `toPiece` through hours `fromHour` to less than `toHour`. Makes no object in an hour; ranges of pieces
    /// that do not overlap may run side by side. Where they are parted at multiples of [Stack#TOGETHER] the answer is the same to the last digit
    /// however many there are.
    void hours(Stack stack, Air air, int fromHour, int toHour, int fromPiece, int toPiece);

    default void hours(Stack stack, Air air, int fromHour, int toHour) { hours(stack, air, fromHour, toHour, 0, stack.pieces); }

    /// Plain Java, which runs wherever Java does.
    Transport PLAIN = PlainTransport::hours;
}
