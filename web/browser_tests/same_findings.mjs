// Compares two findings documents: the same texts, and numbers equal to 1e-12 of their size.
const tolerance = 1e-12;

/** { differences: [path and values], numbers, si, largest } */
export function compareFindings(expected, actual) {
  const result = { differences: [], numbers: 0, si: 0, largest: 0 };
  const compare = (one, other, path) => {
    if (typeof one === 'number' && typeof other === 'number') {
      const size = Math.max(Math.abs(one), Math.abs(other));
      const relative = size === 0 ? 0 : Math.abs(one - other) / size;
      result.numbers += 1;
      if (path.endsWith('.si')) result.si += 1;
      result.largest = Math.max(result.largest, relative);
      if (relative > tolerance) result.differences.push(`${path}: ${one} and ${other}`);
    } else if (
      one !== null &&
      typeof one === 'object' &&
      other !== null &&
      typeof other === 'object'
    ) {
      for (const key of new Set([...Object.keys(one), ...Object.keys(other)])) {
        compare(one[key], other[key], `${path}.${key}`);
      }
    } else if (one !== other) {
      result.differences.push(`${path}: ${JSON.stringify(one)} and ${JSON.stringify(other)}`);
    }
  };
  compare(expected, actual, '');
  return result;
}

/** Every number in SI, in order. */
export function siNumbers(value) {
  if (value === null || typeof value !== 'object') return [];
  return Object.entries(value).flatMap(([key, inner]) =>
    key === 'si' && typeof inner === 'number' ? [inner] : siNumbers(inner),
  );
}
