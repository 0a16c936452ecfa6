/**
 * Figures by trust as the coverage of the first version (a74e744) counted them: published, memory, common
 * practice, derived. Courses of shapes were not told apart from their formulas then.
 */
export const FIRST_VERSION: Readonly<Record<string, readonly [number, number, number, number]>> = {
  "BS8666:2005": [237, 22, 0, 11],
  "BS8666:2020": [31, 228, 0, 17],
  "EC2:2004": [4, 62, 2, 0],
  "DIN-EC2:2013": [8, 47, 2, 0],
  "AS3600:2018": [6, 57, 2, 0],
  "NZS3109:1997": [14, 43, 2, 0],
  "ACI318:2019": [69, 61, 2, 0],
  "CSA-A23.1:2019": [18, 46, 2, 6],
  "IS2502:1963": [45, 23, 2, 12],
  "INDIA-SITE": [54, 21, 6, 12],
  "SANS282:2011": [2, 33, 1, 0],
  "ISO3766:2003": [0, 51, 2, 0],
  "JASS5:2018": [53, 27, 2, 0],
  "GB50204:2015": [0, 67, 2, 0],
};
