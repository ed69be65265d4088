let rules: CSSStyleSheet | null = null;

/** Tells the browser how large the paper is (mm) that is printed on, without margins of its own: a sheet has them. */
export function pageSize(width: number, height: number): void {
  if (rules === null) {
    rules = new CSSStyleSheet();
    document.adoptedStyleSheets = [...document.adoptedStyleSheets, rules];
  }
  rules.replaceSync(`@page { size: ${width}mm ${height}mm; margin: 0; }`);
}
