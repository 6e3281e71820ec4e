/**
 * Girths of children by age. Lengths are millimetres, ages years.
 *
 * Source: R. G. Snyder et al., Anthropometry of Infants, Children and Youths
 * to Age 18 for Product Safety Design, UM-HSRI-77-17, 1977 (US Consumer
 * Product Safety Commission), girls and boys together; 63 to 108 children a
 * row, measured 1975 to 1977. It has nothing under two years, and neither has
 * this project: nothing here is a default for a baby.
 */
export type ChildRow = {
  readonly ageFrom: number;
  readonly ageTo: number;
  readonly mean: number;
  readonly sd: number;
  readonly p5: number;
  readonly p95: number;
};

export const CHILD_NECK_GIRTH_MM: readonly ChildRow[] = [
  { ageFrom: 2, ageTo: 3.5, mean: 238, sd: 12, p5: 217, p95: 255 },
  { ageFrom: 3.5, ageTo: 4.5, mean: 243, sd: 14, p5: 220, p95: 263 },
  { ageFrom: 4.5, ageTo: 5.5, mean: 250, sd: 14, p5: 229, p95: 271 },
  { ageFrom: 5.5, ageTo: 6.5, mean: 257, sd: 14, p5: 235, p95: 280 },
  { ageFrom: 6.5, ageTo: 7.5, mean: 261, sd: 15, p5: 239, p95: 279 },
  { ageFrom: 7.5, ageTo: 8.5, mean: 271, sd: 18, p5: 244, p95: 297 },
  { ageFrom: 8.5, ageTo: 9.5, mean: 277, sd: 17, p5: 255, p95: 304 },
  { ageFrom: 9.5, ageTo: 10.5, mean: 279, sd: 19, p5: 249, p95: 314 },
  { ageFrom: 10.5, ageTo: 11.5, mean: 283, sd: 18, p5: 259, p95: 308 },
  { ageFrom: 11.5, ageTo: 12.5, mean: 294, sd: 17, p5: 271, p95: 322 },
  { ageFrom: 12.5, ageTo: 13.5, mean: 300, sd: 17, p5: 278, p95: 331 },
  { ageFrom: 13.5, ageTo: 14.5, mean: 313, sd: 21, p5: 283, p95: 349 },
  { ageFrom: 14.5, ageTo: 15.5, mean: 318, sd: 20, p5: 288, p95: 354 },
  { ageFrom: 15.5, ageTo: 16.5, mean: 329, sd: 30, p5: 288, p95: 385 },
  { ageFrom: 16.5, ageTo: 17.5, mean: 332, sd: 28, p5: 297, p95: 377 },
  { ageFrom: 17.5, ageTo: 19, mean: 345, sd: 33, p5: 298, p95: 402 },
];

export const CHILD_WRIST_GIRTH_MM: readonly ChildRow[] = [
  { ageFrom: 2, ageTo: 3.5, mean: 113, sd: 8, p5: 100, p95: 128 },
  { ageFrom: 3.5, ageTo: 4.5, mean: 115, sd: 9, p5: 103, p95: 130 },
  { ageFrom: 4.5, ageTo: 5.5, mean: 118, sd: 8, p5: 106, p95: 132 },
  { ageFrom: 5.5, ageTo: 6.5, mean: 122, sd: 8, p5: 110, p95: 133 },
  { ageFrom: 6.5, ageTo: 7.5, mean: 124, sd: 10, p5: 110, p95: 142 },
  { ageFrom: 7.5, ageTo: 8.5, mean: 128, sd: 10, p5: 114, p95: 146 },
  { ageFrom: 8.5, ageTo: 9.5, mean: 132, sd: 11, p5: 116, p95: 149 },
  { ageFrom: 9.5, ageTo: 10.5, mean: 135, sd: 14, p5: 117, p95: 162 },
  { ageFrom: 10.5, ageTo: 11.5, mean: 135, sd: 12, p5: 116, p95: 157 },
  { ageFrom: 11.5, ageTo: 12.5, mean: 142, sd: 12, p5: 126, p95: 161 },
  { ageFrom: 12.5, ageTo: 13.5, mean: 146, sd: 12, p5: 130, p95: 167 },
  { ageFrom: 13.5, ageTo: 14.5, mean: 153, sd: 12, p5: 137, p95: 173 },
  { ageFrom: 14.5, ageTo: 15.5, mean: 154, sd: 11, p5: 136, p95: 172 },
  { ageFrom: 15.5, ageTo: 16.5, mean: 160, sd: 14, p5: 135, p95: 182 },
  { ageFrom: 16.5, ageTo: 17.5, mean: 157, sd: 15, p5: 137, p95: 178 },
  { ageFrom: 17.5, ageTo: 19, mean: 163, sd: 18, p5: 133, p95: 197 },
];
