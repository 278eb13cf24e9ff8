/// How does water move through wood, and what do its damp days add up to?
///
/// In: pieces with their skins ([Timber], [Skin]) laid in a [Stack], and hours of [Air]. Out: their moisture hour by hour, moved by [Transport]; from it a [Dose] of decay. Units: m, kg, s, °C,
/// moisture as a fraction of oven-dry mass. Read first: [Transport], [Stack], [Dose].
///
/// What it can tell: which of two members is wetter and by about how much, whether a film, a thickness or an end grain is what keeps it wet, weeks or months of drying, and which
/// remedy changes most. What it cannot: the moisture of this piece (a meter can), the day that decay begins or ends (nobody can), anything of sun, checks, sapwood beside heartwood, salts, or a
/// fungus that carries its own water. Held to boards in the yard (`AirDryingTest`) maple comes out near the time seen (80 days in the mean, 90 seen), a lone board of pine at about half of what wide piles took. Under liquid that
/// lies for days a failing film, open over a tenth, drinks nearly as bare wood does: water is taken to spread behind it at once, and the finer the slices the more so. Coefficients of one species measured in two ways differ by a factor of two, and uptake of liquid by more.
package sillwright.wood.drying;
