/** The first index below `length` for which something is so that, once it is so, stays so; `length` where it never is. */
export function firstIndex(length: number, isSo: (index: number) => boolean): number {
  let low = 0;
  let high = length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (isSo(middle)) high = middle;
    else low = middle + 1;
  }
  return low;
}
