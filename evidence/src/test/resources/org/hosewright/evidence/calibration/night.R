# A night's errors-in-variables problem as R sees it: nls with the port algorithm, every tip pressure an unknown.
# Arguments: scatter of pump, tip and meter, share of the tip pressure that its gauge sees. Standard input: length [ft], rise [ft],
# pump [psi], tip [psi], flow [gpm]. Output: nozzle, hose, piping, pump gauge, tip gauge, meter in prior standard deviations, one a line.
argument <- as.numeric(commandArgs(trailingOnly = TRUE))
read <- read.csv(file("stdin"), header = FALSE, col.names = c("length", "rise", "pump", "tip", "flow"))
count <- nrow(read)

residuals <- function(nozzle, hose, piping, gauge, offset, meter, tip) {
  flow <- exp(0.015 * nozzle) * 29.7 * 0.875^2 * sqrt(tip)
  loss <- (15.5 * exp(0.35 * hose) * read$length / 100 + 6 * piping) * (flow / 100)^2
  pump <- tip + loss + 0.434 * read$rise
  c(
    nozzle, hose, piping, gauge, offset, meter,
    (pump + 2 * gauge - read$pump) / argument[1],
    (argument[4] * tip + offset - read$tip) / (0.5 * argument[2]),
    (log(flow) + 0.05 * meter - log(read$flow)) / (0.0125 * argument[3])
  )
}

nothing <- rep(0, 6 + 3 * count)
found <- nls(
  nothing ~ residuals(nozzle, hose, piping, gauge, offset, meter, tip),
  start = list(nozzle = 0, hose = 0, piping = 0, gauge = 0, offset = 0, meter = 0, tip = read$tip / argument[4]),
  algorithm = "port",
  control = nls.control(maxiter = 500, nDcentral = TRUE)
)
writeLines(format(coef(found)[1:6], digits = 17))
