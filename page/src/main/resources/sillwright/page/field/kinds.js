// What a new member is taken to be until somebody says otherwise, by its kind: how it lies, its job, its common sizes.
// Common practice, no source; the sizes are dressed sizes of US lumber, and rounded sizes of European timber.

const IN = 25.4;
const us = (...pairs) => pairs.map(pair => pair.map(inch => inch * IN));

const SQUARE = us([3.5, 3.5], [5.5, 5.5], [7.25, 7.25], [9.25, 9.25]), SQUARE_SI = [[100, 100], [120, 120], [140, 140], [200, 200]];
const BOARD = us([3.5, 0.75], [5.5, 0.75], [7.25, 0.75], [9.25, 0.75], [11.25, 0.75]), BOARD_SI = [[100, 20], [140, 20], [180, 20], [220, 25]];
const BEAMS = us([5.5, 3.5], [7.25, 5.5], [9.25, 5.5], [11.25, 5.5]), BEAMS_SI = [[140, 100], [200, 120], [240, 120], [300, 140]];
const PLANK = us([1.125, 9.25], [1.125, 11.25], [1.5, 9.25], [1.5, 11.25]), PLANK_SI = [[30, 240], [40, 280], [40, 300]];
const THIN = us([1.5, 1.5], [1.375, 1.375], [2.25, 3.5], [2.25, 2.25]), THIN_SI = [[35, 35], [45, 60], [45, 90]];

const kind = (run, role, lengthMm, inches, metric, more = {}) => ({run, role, lengthMm, inches, metric, ...more});
const upright = (role, lengthMm, inches, metric, more) => kind('upright', role, lengthMm, inches, metric, more);
const level = (role, lengthMm, inches, metric, more) => kind('level', role, lengthMm, inches, metric, more);

/** In the order they are met most: what stands near water first. */
export const KINDS = {
  'post': upright('bears-load', 2438.4, SQUARE, SQUARE_SI, {startEnd: 'bare'}),
  'sill': level('bears-load', 3048, SQUARE, SQUARE_SI),
  'window-sill': level('sheds-water', 914.4, us([1.5, 5.5], [1.5, 7.25], [1.75, 5.5]), [[40, 140], [45, 180]], {startEnd: 'bare', farEnd: 'bare'}),
  'corner-board': upright('sheds-water', 2438.4, BOARD, BOARD_SI, {startEnd: 'bare'}),
  'skirt-board': level('sheds-water', 3048, BOARD, BOARD_SI, {startEnd: 'bare', farEnd: 'bare'}),
  'fascia': level('sheds-water', 3048, BOARD, BOARD_SI, {startEnd: 'bare', farEnd: 'bare'}),
  'clapboard': level('sheds-water', 2438.4, us([4.5, 0.5], [5.5, 0.5], [3.5, 0.5]), [[115, 13], [140, 15]]),
  'casing': upright('sheds-water', 1524, BOARD, BOARD_SI, {startEnd: 'bare'}),
  'column': upright('bears-load', 2438.4, SQUARE, SQUARE_SI, {startEnd: 'bare'}),
  'column-base': level('bears-load', 304.8, us([3.5, 11.25], [1.5, 9.25]), [[80, 280], [40, 240]], {startEnd: 'bare', farEnd: 'bare'}),
  'plinth': level('bears-load', 203.2, us([1.5, 7.25], [1.125, 5.5]), [[40, 180], [30, 160]], {startEnd: 'bare', farEnd: 'bare'}),
  'beam': level('bears-load', 3048, BEAMS, BEAMS_SI),
  'joist': kind('outward', 'bears-load', 2438.4, us([1.5, 7.25], [1.5, 9.25], [1.5, 5.5]), [[45, 180], [45, 220]]),
  'stringer': kind('outward', 'bears-load', 914.4, us([1.5, 9.25], [1.5, 11.25]), [[40, 220], [45, 280]], {startEnd: 'bare'}),
  'tread': level('bears-load', 1219.2, PLANK, PLANK_SI, {startEnd: 'bare', farEnd: 'bare'}),
  'floorboard': kind('outward', 'bears-load', 1828.8, us([3.25, 1], [5.25, 1], [3.25, 0.75]), [[90, 28], [120, 28]], {startEnd: 'bare'}),
  'rail': level('bears-load', 1828.8, THIN, THIN_SI),
  'baluster': upright('decorative', 711.2, THIN, THIN_SI),
  'newel': upright('bears-load', 1219.2, SQUARE, SQUARE_SI, {startEnd: 'bare'}),
  'soffit': level('sheds-water', 3048, us([0.75, 9.25], [0.75, 11.25], [0.75, 5.5]), [[20, 220], [20, 300]]),
  'frieze': level('sheds-water', 3048, BOARD, BOARD_SI),
  'rake-board': kind('raking', 'sheds-water', 3048, BOARD, BOARD_SI, {startEnd: 'bare', farEnd: 'bare'}),
  'brickmould': upright('sheds-water', 1524, us([2, 1.25]), [[50, 32]], {startEnd: 'bare'}),
  'head-casing': level('sheds-water', 914.4, BOARD, BOARD_SI),
  'water-table': level('sheds-water', 3048, us([1.25, 5.5], [1.25, 7.25]), [[30, 140], [30, 180]], {startEnd: 'bare', farEnd: 'bare'}),
  'shingle': upright('sheds-water', 406.4, us([5, 0.375], [7, 0.375]), [[125, 10], [180, 10]], {startEnd: 'bare'}),
  'threshold': level('sheds-water', 914.4, us([1.5, 5.5], [1.75, 7.25]), [[40, 140], [45, 180]]),
  'sash': level('sheds-water', 813, us([3, 1.375], [2, 1.375]), [[75, 35], [50, 35]]),
  'door': upright('sheds-water', 2032, us([32, 1.75], [36, 1.75]), [[800, 45], [900, 45]], {startEnd: 'bare'}),
  'shutter': upright('decorative', 1422.4, us([14, 1.125], [16, 1.125]), [[350, 28], [400, 28]], {startEnd: 'bare'}),
  'bracket': upright('decorative', 457.2, us([1.5, 5.5], [3.5, 5.5]), [[40, 140], [90, 140]]),
  'other': level('decorative', 914.4, BOARD, BOARD_SI),
};

export const sizesOf = (one, units) => units === 'us' ? KINDS[one].inches : KINDS[one].metric;
