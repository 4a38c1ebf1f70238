# The work of tests/speed/sampling-work.ts, done with R's own distributions (base R, nothing added). Prints for each work: its name, seconds
# of this process's own time for one time, and a sum of the answers, by which the two sides are held to have done the same. Every work is
# timed inside this process, the median of seven rounds of at least 0.1 s each, after a first time that is not counted. Vectors are used wherever the work has many of a kind.

spent <- function(runs, work) {
  begun <- proc.time()
  for (i in seq_len(runs)) work()
  took <- proc.time() - begun
  took[["user.self"]] + took[["sys.self"]]
}
timed <- function(name, work) {
  check <- work()
  times <- numeric(7)
  runs <- 1
  repeat {
    took <- spent(runs, work)
    if (took >= 0.1) break
    runs <- ceiling(runs * max(2, 0.12 / max(took, 0.001)))
  }
  for (round in 1:7) times[round] <- spent(runs, work) / runs
  cat(name, format(median(times), digits = 10), format(check, digits = 17), "\n")
}

# Look-up: letter by lot size and level, then along the arrows of the master table. One after another, as lots come; the tables stand ready as matrices.
letters <- read.csv("tests/reference/data/code-letters.csv", check.names = FALSE)
from <- letters$lot_min
level <- match("II", names(letters))
table <- as.matrix(read.csv("tests/reference/data/single-normal.csv", check.names = FALSE, colClasses = "character"))
rows <- match(letters[[level]], table[, 1])
sizes <- as.integer(table[, 2])
cells <- table[, -(1:2)]
ac <- suppressWarnings(matrix(as.integer(sub("/.*", "", cells)), nrow(cells)))
step <- ifelse(cells == "down", 1L, ifelse(cells == "up", -1L, 0L))
aqls <- as.numeric(colnames(cells))
look_up <- function(lot, aql) {
  row <- rows[findInterval(lot, from)]
  column <- match(aql, aqls)
  while (step[row, column] != 0L) row <- row + step[row, column]
  c(min(sizes[row], lot), ac[row, column])
}
lots <- c(2, 20, 60, 120, 200, 400, 1000, 2500, 5000, 20000, 100000, 400000)
timed("look-up", function() {
  sum <- 0
  for (lot in lots) for (aql in aqls) sum <- sum + sum(look_up(lot, aql))
  sum
})

# Curves of a double plan: Pa, rejection, average sample, outgoing quality, total inspection, at 200 qualities at once. In one lot a nonconforming
# piece that is left sees the samples come from the other N - 1 pieces, D - 1 of them nonconforming; of a process the chances stay as they are.
n1 <- 125; n2 <- 125; ac1 <- 2; re1 <- 5; ac2 <- 6; N <- 10000
p <- seq(0, 0.1, length.out = 200)
curves <- function(first, tail, accept2, reject2, outgoing, p) {
  accepted1 <- first$at_most(ac1)
  rejected <- tail(re1 - 1)
  second <- 0
  goes_on <- 0
  for (d in (ac1 + 1):(re1 - 1)) {
    here <- first$exactly(d)
    goes_on <- goes_on + here
    second <- second + here * accept2(d)
    rejected <- rejected + here * reject2(d)
  }
  pa <- accepted1 + second
  asn <- n1 + n2 * goes_on
  aoq <- outgoing(accepted1, second)
  ati <- n1 * accepted1 + (n1 + n2) * second + N * rejected
  sum(pa) + sum(rejected) + sum(asn) + sum(aoq) + sum(ati)
}
left <- function(accepted1, second) (accepted1 * (N - n1) + second * (N - n1 - n2)) / N
timed("oc-lot", function() {
  D <- round(p * N)
  curves(list(at_most = function(k) phyper(k, D, N - D, n1), exactly = function(k) dhyper(k, D, N - D, n1)), function(k) phyper(k, D, N - D, n1, lower.tail = FALSE),
         function(d) phyper(ac2 - d, pmax(D - d, 0), N - n1 - pmax(D - d, 0), n2), function(d) phyper(ac2 - d, pmax(D - d, 0), N - n1 - pmax(D - d, 0), n2, lower.tail = FALSE),
         function(accepted1, second) {
           others <- pmax(D - 1, 0)
           accepted2 <- 0
           for (d in (ac1 + 1):(re1 - 1)) accepted2 <- accepted2 + dhyper(d, others, N - 1 - others, n1) * phyper(ac2 - d, pmax(others - d, 0), N - 1 - n1 - pmax(others - d, 0), n2)
           D / N * left(phyper(ac1, others, N - 1 - others, n1), accepted2)
         }, D / N)
})
timed("oc-process", function() {
  curves(list(at_most = function(k) pbinom(k, n1, p), exactly = function(k) dbinom(k, n1, p)), function(k) pbinom(k, n1, p, lower.tail = FALSE),
         function(d) pbinom(ac2 - d, n2, p), function(d) pbinom(ac2 - d, n2, p, lower.tail = FALSE),
         function(accepted1, second) p * left(accepted1, second), p)
})

# Smallest single plan through two points. Process: the n an Ac asks for is a quantile of the negative binomial, for twenty Ac at once, and the first
# that also accepts p1 often enough is taken. Lot: the same, with the twenty n found by halving together.
points <- list(c(0.01, 0.05), c(0.01, 0.03), c(0.02, 0.06), c(0.005, 0.02), c(0.04, 0.1), c(0.001, 0.01))
alpha <- 0.05; beta <- 0.1
first_plan <- function(n_of, risk) {
  for (block in 0:50) {
    c <- block * 20 + 0:19
    n <- n_of(c)
    good <- which(risk(c, n) <= alpha)
    if (length(good) > 0) return(n[good[1]] + c[good[1]])
  }
}
timed("design-process", function() {
  sum <- 0
  for (q in points) sum <- sum + first_plan(function(c) c + 1 + qnbinom(beta, c + 1, q[2], lower.tail = FALSE), function(c, n) pbinom(c, n, q[1], lower.tail = FALSE))
  sum
})
timed("design-lot", function() {
  sum <- 0
  for (q in points) {
    good <- floor(N * q[1] + 1e-9); bad <- ceiling(N * q[2] - 1e-9)
    halved <- function(c) {
      few <- c; enough <- rep(N, length(c))
      while (any(enough - few > 1)) {
        middle <- (few + enough) %/% 2
        meets <- phyper(c, bad, N - bad, middle) <= beta
        enough <- ifelse(meets, middle, enough)
        few <- ifelse(meets, few, middle)
      }
      enough
    }
    sum <- sum + first_plan(halved, function(c, n) phyper(c, good, N - good, n, lower.tail = FALSE))
  }
  sum
})

# A whole scheme under the switching rules of ISO 2859-1 at 50 qualities: the chain is laid out state by state once, its transitions are filled in for
# each quality, and the long run is solved for. Normal: lots scored in a row (0 to 9) and accepted since the last one not accepted (0 to 4); tightened:
# accepted in a row (0 to 4) and not accepted (0 to 4); reduced.
normal <- function(scored, since) 1 + scored * 5 + since
tight <- function(row, bad) 51 + row * 5 + bad
reduced <- 76
at <- NULL
add <- function(from, to, chance) at <<- rbind(at, c(from, to, chance))
S <- 1; U <- 2; R <- 3; TA <- 4; TR <- 5; RK <- 6; RL <- 7
for (scored in 0:9) for (since in 0:4) {
  here <- normal(scored, since)
  later <- min(4, since + 1)
  add(here, if (scored == 9) reduced else normal(scored + 1, later), S)
  add(here, normal(0, later), U)
  add(here, if (since < 4) tight(0, 0) else normal(0, 0), R)
}
for (row in 0:4) for (bad in 0:4) {
  add(tight(row, bad), if (row == 4) normal(0, 4) else tight(row + 1, bad), TA)
  add(tight(row, bad), if (bad == 4) tight(0, 0) else tight(0, bad + 1), TR)
}
add(reduced, reduced, RK)
add(reduced, normal(0, 4), RL)
place <- (at[, 1] - 1) * reduced + at[, 2]
qualities <- seq(0.002, 0.1, length.out = 50)
nN <- 80; acN <- 2; acScore <- 1; acT <- 1; nR <- 32; acR <- 1; reR <- 3
timed("scheme", function() {
  accepted <- pbinom(acN, nN, qualities)
  scored <- pbinom(acScore, nN, qualities)
  onTight <- pbinom(acT, nN, qualities)
  keeps <- pbinom(acR, nR, qualities)
  acceptedReduced <- pbinom(reR - 1, nR, qualities)
  sum <- 0
  for (i in seq_along(qualities)) {
    chance <- c(scored[i], accepted[i] - scored[i], 1 - accepted[i], onTight[i], 1 - onTight[i], keeps[i], 1 - keeps[i])
    m <- matrix(0, reduced, reduced)
    filled <- rowsum(chance[at[, 3]], place)
    m[as.integer(rownames(filled))] <- filled
    diag(m) <- diag(m) - 1
    m[reduced, ] <- 1
    share <- solve(m, c(rep(0, reduced - 1), 1))
    onNormal <- sum(share[1:50]); onTightened <- sum(share[51:75]); onReduced <- share[reduced]
    sum <- sum + onNormal * accepted[i] + onTightened * onTight[i] + onReduced * acceptedReduced[i] + (onNormal + onTightened) * nN + onReduced * nR
  }
  sum
})
