/// How likely is each source, once some sightings are known? The noisy-OR network and its exact inference: [Network].
///
/// In: priors, links and looks. Out: probabilities, and what a further look is worth, bits. Knows no building. Read first: [Network].
package sillwright.water.net;
