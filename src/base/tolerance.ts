/**
 * How near is near enough, where more than one stage goes by it. What one drawing, one sum or one library call alone goes by (the chords of its arcs, the
 * end of its search) stands there, with its reason.
 */

/**
 * What reckoning may be off: in lengths of some metres mm, in angles radians, else as a share or in pieces counted. Double precision rounds a length of 10 m to 2·10⁻¹² mm; some
 * hundreds of sums of such stay below this, and it is far below anything that is drawn.
 */
export const ROUNDING = 1e-9;

/**
 * Places and sizes that differ by less are the same, mm: a thousand times what reckoning may be off, so that nothing falls apart by rounding; a
 * thousandth of what any tool here cuts to or paper shows, so that nothing is taken for the same that a maker could tell apart.
 */
export const SAME_PLACE = 1e-6;

/** Arcs taken as chords, to look at or measure by, stray no further than this, mm: a tenth of what a scriber shows, finer than a saw. */
export const CHORD_STRAY = 0.01;
