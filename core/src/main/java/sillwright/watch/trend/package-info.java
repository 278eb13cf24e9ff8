/// Is it a trend, or is it noise? Pure statistics of series: [Kendall], [Slopes], [Break]. Units: whatever the caller's are.
package sillwright.watch.trend;
