const NAME = 'bendbuck.tour';

/** Whether this browser has been shown round, or keeps nothing that could tell. */
export function wasShown(): boolean {
  try {
    return localStorage.getItem(NAME) === 'shown';
  } catch {
    return true;
  }
}

export function rememberShown(): void {
  try {
    localStorage.setItem(NAME, 'shown');
  } catch {
    // A browser set to keep nothing: nobody is shown round unasked, see wasShown.
  }
}
