/// The field book on disk: the exchange file `*.survey.json` in and out, with every fault named and nothing lost, and the
/// findings of the whole road as `findings.json`. Read first: [SurveyFile].
package sillwright.store;
