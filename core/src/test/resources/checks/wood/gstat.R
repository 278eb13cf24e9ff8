# Makes gstat-answers.csv: Rscript gstat.R, with Debian's r-cran-gstat. Simple kriging, mean known; Matérn by gstat's "Ste" (Stein's form),
# whose argument is 2*sqrt(nu)*h/range where ours is sqrt(2*nu)*h/length; across the grain stretched so that one range serves both.
suppressMessages({library(sp); library(gstat)})
mean <- 4; spread <- 12; along <- 150; across <- 60; hand <- 1.5
d <- read.csv("regression-readings.csv", comment.char = "#")
asked <- data.frame(x = c(0, 50, 120, 333, 600, 899, 1500), y = c(0, 70, 20, 100, 70, 139, 70))
r <- data.frame(x = d$along_mm, y = d$across_mm * along / across, z = d$depth_mm); coordinates(r) <- ~x + y
a <- data.frame(x = asked$x, y = asked$y * along / across); coordinates(a) <- ~x + y
con <- file("gstat-answers.csv", "w")
writeLines(c(paste0("# source: R gstat ", packageVersion("gstat"), " (R ", getRversion(), "), krige with beta: simple kriging"), "# where: gstat.R beside this file",
  "# known: computed", "# checks: test sillwright.wood.DecayFieldTest", "shape,along_mm,across_mm,mean_mm,deviation_mm"), con)
for (nu in c(2.5, 1.5)) {
  v <- vgm(psill = spread^2, model = "Ste", range = along * sqrt(2), kappa = nu, add.to = vgm(hand^2, "Err", 0))
  k <- krige(z ~ 1, r, a, model = v, beta = mean, debug.level = 0)
  for (i in seq_len(nrow(asked))) writeLines(paste(ifelse(nu == 2.5, "MATERN_5_2", "MATERN_3_2"), asked$x[i], asked$y[i],
    format(k$var1.pred[i], digits = 12), format(sqrt(k$var1.var[i]), digits = 12), sep = ","), con)
}
close(con)
