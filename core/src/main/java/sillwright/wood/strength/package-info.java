/// How much does a piece of wood bear? The published equations of allowable stress design, on plain numbers.
///
/// In: sizes, loads, and the reference design values of the tables beside this package. Out: stresses, factors and ratios.
/// Units: mm, mm², mm³, N, MPa. It knows nothing of surveys or decay: the wood stage hands it the section that is left.
/// Every number is a screening figure; load-bearing work goes to a licensed engineer. Read first: [DesignValues],
/// [Adjusted], [Post], [Beam].
package sillwright.wood.strength;
