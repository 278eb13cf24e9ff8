/// What does a limited budget buy most of? An exact choice among things that cost something, are worth something and need each other: [Choices].
package sillwright.watch.budget;
