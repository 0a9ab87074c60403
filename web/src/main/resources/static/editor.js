// The numbers beside a case file's lines, and the way from a problem to its line.
(() => {
  'use strict';
  const text = document.getElementById('text');
  const gutter = document.querySelector('.gutter');
  if (!text || !gutter) return;
  const marked = new Set((gutter.dataset.marked || '').split(' ').filter(Boolean).map(Number));
  let shown = 0;

  const number = () => {
    const count = text.value.split('\n').length;
    if (count === shown) return;
    shown = count;
    gutter.replaceChildren(...Array.from({ length: count }, (_, i) => {
      const line = document.createElement('span');
      line.textContent = marked.has(i + 1) ? `● ${i + 1}` : String(i + 1);
      if (marked.has(i + 1)) line.className = 'marked';
      return line;
    }));
  };

  const goTo = (line) => {
    const lines = text.value.split('\n');
    const at = Math.min(line, lines.length) - 1;
    const start = lines.slice(0, at).reduce((sum, l) => sum + l.length + 1, 0);
    text.focus();
    text.setSelectionRange(start, start + lines[at].length);
    const height = text.scrollHeight / Math.max(1, lines.length);
    text.scrollTop = Math.max(0, at * height - text.clientHeight / 3);
    text.scrollLeft = 0;
  };

  text.addEventListener('input', number);
  text.addEventListener('scroll', () => { gutter.scrollTop = text.scrollTop; });
  document.querySelectorAll('.where').forEach((b) => b.addEventListener('click', () => goTo(Number(b.dataset.line))));
  number();

  // Leaving with typed text is asked about; sending it is not leaving.
  const first = text.value;
  let sent = false;
  text.form.addEventListener('submit', () => { sent = true; });
  window.addEventListener('beforeunload', (event) => {
    if (!sent && (marked.size > 0 || text.value !== first)) event.preventDefault();
  });
})();
