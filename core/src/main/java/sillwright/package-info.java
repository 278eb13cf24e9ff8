/// The whole road: [Figures] lists every calculation that can be worked alone. The stages know nothing of this package.
package sillwright;
