/**
 * Larger half-axis of the standard ellipse of a two-tape fix. With weights w = 1/σ² and cut angle γ the normal matrix has
 * trace w₁+w₂ and determinant w₁·w₂·sin²γ, and the axis is 1/√λ of its smaller eigenvalue (error propagation, any text).
 */
export function worstAxis(sineOfCut: number, sigmaA: number, sigmaB: number): number {
  const [wa, wb] = [1 / (sigmaA * sigmaA), 1 / (sigmaB * sigmaB)];
  const trace = wa + wb;
  const determinant = wa * wb * sineOfCut * sineOfCut;
  // 2D/(T+√…) is the smaller root without the cancellation of T−√…
  const smaller = (2 * determinant) / (trace + Math.sqrt(Math.max(0, trace * trace - 4 * determinant)));
  return 1 / Math.sqrt(smaller);
}
