/** Buttons whose second tap would say something of the next thing, which nobody has seen yet. */

/** Does the work once for a double tap: its second half is an accident. Keys have no halves. */
export function singly(work: () => void): (event: Pick<MouseEvent, 'detail'>) => void {
  return ({ detail }) => {
    if (detail < 2) work();
  };
}
