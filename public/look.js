// Before the first paint: light or dark, and controls for a desk or for one hand in a basement.
(() => {
  const root = document.documentElement;
  const kept = (key) => {
    try {
      return localStorage.getItem(key);
    } catch {
      return null; // storage not allowed: what the device prefers
    }
  };
  const dark = matchMedia('(prefers-color-scheme: dark)').matches;
  const field = matchMedia('(pointer: coarse), (max-width: 899px)').matches;
  root.dataset.theme = kept('theme') ?? (dark ? 'dark' : 'light');
  root.dataset.hand = kept('hand') ?? (field ? 'field' : 'desk');
  root.dataset.keys = kept('keys') ?? 'on';
})();
