// Lanczos coefficients for g = 7, n = 9 (Godfrey's set; from memory, checked against factorials in the test).
const LANCZOS_G = 7;
const LANCZOS_HEAD = 0.99999999999980993;
const LANCZOS = [
  676.5203681218851, -1259.1392167224028, 771.32342877765313, -176.61502916214059, 12.507343278686905,
  -0.13857109526572012, 9.9843695780195716e-6, 1.5056327351493116e-7,
];

/** Relative change of a term or a fraction at which a sum has all the digits that it can have. */
const SERIES = 1e-16;
/** Terms that are never reached for a valid argument: a series takes some tens, plus a few times √shape. */
const MOST_TERMS = 100_000;
/** Relative width of the bracket at which the root is found. */
const ROOT = 1e-15;

/**
 * The value under which a chi-square variable with `dof` degrees of freedom falls with probability `p`. `dof` > 0, 0 < p < 1,
 * else it throws. Good to about 1e-12 relative: Newton's method on the regularised incomplete gamma function, kept within a
 * bracket, from Wilson and Hilferty's start (Abramowitz & Stegun 26.4; from memory).
 */
export function chiSquareQuantile(p: number, dof: number): number {
  if (!(p > 0 && p < 1)) throw new RangeError(`p is ${p}, must lie between 0 and 1`);
  if (!(dof > 0 && Number.isFinite(dof))) throw new RangeError(`dof is ${dof}, must be above 0 and finite`);
  const shape = dof / 2;
  const logGammaShape = logGamma(shape);
  let low = 0;
  let high = Math.max(1, dof);
  while (incompleteGamma(shape, high / 2, logGammaShape) < p) {
    low = high;
    high *= 2;
  }
  let x = wilsonHilferty(p, dof);
  if (!(x > low && x < high)) x = (low + high) / 2;
  while (high - low > ROOT * high) {
    const error = incompleteGamma(shape, x / 2, logGammaShape) - p;
    if (error === 0) return x;
    if (error > 0) high = x;
    else low = x;
    const density = Math.exp((shape - 1) * Math.log(x / 2) - x / 2 - logGammaShape) / 2;
    const newton = x - error / density;
    const next = newton > low && newton < high ? newton : (low + high) / 2;
    if (Math.abs(next - x) <= ROOT * x) return next;
    x = next;
  }
  return x;
}

/** Regularised lower incomplete gamma function P(shape, x), in [0, 1]. */
function incompleteGamma(shape: number, x: number, logGammaShape: number): number {
  if (x <= 0) return 0;
  const front = Math.exp(shape * Math.log(x) - x - logGammaShape);
  return x < shape + 1 ? front * lowerSeries(shape, x) : 1 - front * upperFraction(shape, x);
}

/** Σ xᵏ / (shape (shape + 1) … (shape + k)). */
function lowerSeries(shape: number, x: number): number {
  let term = 1 / shape;
  let sum = term;
  for (let k = 1; k < MOST_TERMS && term > SERIES * sum; k++) {
    term *= x / (shape + k);
    sum += term;
  }
  return sum;
}

/** The continued fraction 1/(x + 1 − a − 1(1 − a)/(x + 3 − a − …)) by Lentz's method. */
function upperFraction(shape: number, x: number): number {
  let b = x + 1 - shape;
  let c = Number.POSITIVE_INFINITY;
  let d = 1 / b;
  let fraction = d;
  for (let k = 1; k < MOST_TERMS; k++) {
    const a = -k * (k - shape);
    b += 2;
    d = 1 / (a * d + b);
    c = b + a / c;
    const change = c * d;
    fraction *= change;
    if (Math.abs(change - 1) <= 2 * Number.EPSILON) break;
  }
  return fraction;
}

/** ln Γ(x) for x > 0. */
function logGamma(x: number): number {
  if (x < 0.5) return Math.log(Math.PI / Math.sin(Math.PI * x)) - logGamma(1 - x);
  const sum = LANCZOS.reduce((total, coefficient, k) => total + coefficient / (x + k), LANCZOS_HEAD);
  const t = x + LANCZOS_G - 0.5;
  return 0.5 * Math.log(2 * Math.PI) + (x - 0.5) * Math.log(t) - t + Math.log(sum);
}

/** A start: the cube root of chi-square over dof is nearly normal. */
function wilsonHilferty(p: number, dof: number): number {
  const tail = Math.min(p, 1 - p);
  const t = Math.sqrt(-2 * Math.log(tail));
  const normal = t - (2.30753 + 0.27061 * t) / (1 + 0.99229 * t + 0.04481 * t * t); // A & S 26.2.22
  const z = p < 0.5 ? -normal : normal;
  return dof * (1 - 2 / (9 * dof) + z * Math.sqrt(2 / (9 * dof))) ** 3;
}
