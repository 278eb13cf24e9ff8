/// The command line: it reads what people type, hands it to the stages, and prints what a person wants to know first.
/// The only `main()` of the program. Read first: [Main].
package sillwright.desk;
