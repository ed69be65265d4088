/** The international foot in metres, exact. Source: Federal Register 85 No. 193, 62698 (5 Oct 2020). */
export const FOOT_M = 0.3048;

/** The inch in metres, exact: a twelfth of the international foot. */
export const INCH_M = 0.0254;

/**
 * The US survey foot in metres, exactly 1200/3937; deprecated since 1 Jan 2023. Only for State Plane zones
 * that were defined in it. Source: Federal Register 85 No. 193, 62698 (5 Oct 2020).
 */
export const US_SURVEY_FOOT_M = 1200 / 3937;
