// Before the first paint, so that no white flash ruins eyes that are used to the dark.
(function () {
  var chosen = null;
  try {
    chosen = localStorage.getItem('waymend.scheme');
  } catch (e) {
    chosen = null;
  }
  var known = ['light', 'dark', 'night', 'amber'];
  var dark = window.matchMedia && window.matchMedia('(prefers-color-scheme: dark)').matches;
  var scheme = known.indexOf(chosen) >= 0 ? chosen : dark ? 'dark' : 'light';
  var papers = { light: '#F2F4F0', dark: '#14181A', night: '#000000', amber: '#000000' };
  document.documentElement.setAttribute('data-scheme', scheme);
  var bar = document.querySelector('meta[name="theme-color"]');
  if (bar) bar.setAttribute('content', papers[scheme]);
})();
