// Draws the figures of the page when they come near, and again when they, their width or the colors change. Every figure
// has a table behind it with the same values, so that a drawing is never the only way to them.
(function () {
  'use strict';

  const drawn = new Map();

  // Takes the room a drawing will need, so that nothing moves when it is drawn.
  function measured(element) {
    const box = element.querySelector('.drawing');
    const width = box.clientWidth;
    if (width === 0) {
      return null;
    }
    const { option: wanted, height } = footingFigure.option(JSON.parse(element.dataset.figure), width);
    box.style.height = height + 'px';
    return { box, width, wanted };
  }

  function draw(element) {
    const ready = measured(element);
    if (ready === null) {
      return;
    }
    const { box, width, wanted } = ready;
    let chart = drawn.get(box);
    if (!chart) {
      chart = echarts.init(box, null, { renderer: 'canvas' });
      drawn.set(box, chart);
    }
    chart.resize();
    chart.setOption(wanted, true);
    box.footingSource = element.dataset.figure;
    box.footingWidth = width;
  }

  const near = new IntersectionObserver(entries => {
    for (const e of entries) {
      if (e.isIntersecting && !drawn.has(e.target)) {
        draw(e.target.closest('.fig'));
      }
    }
  }, { rootMargin: '600px' });

  const sized = new ResizeObserver(entries => {
    for (const e of entries) {
      if (drawn.has(e.target) && e.target.clientWidth !== e.target.footingWidth) {
        draw(e.target.closest('.fig'));
      }
    }
  });

  function look() {
    for (const [box, chart] of [...drawn]) {
      if (!box.isConnected) {
        chart.dispose();
        drawn.delete(box);
      }
    }
    document.querySelectorAll('.fig .drawing').forEach(box => {
      const source = box.closest('.fig').dataset.figure;
      if (!drawn.has(box)) {
        measured(box.closest('.fig'));
      } else if (box.footingSource !== source) {
        draw(box.closest('.fig'));
      }
      near.observe(box);
      sized.observe(box);
    });
  }

  const again = () => [...drawn.keys()].forEach(box => draw(box.closest('.fig')));
  const all = () => document.querySelectorAll('.fig').forEach(draw);

  document.addEventListener('DOMContentLoaded', look);
  document.addEventListener('footing:swapped', look);
  matchMedia('(prefers-color-scheme: dark)').addEventListener('change', again);
  addEventListener('beforeprint', () => { document.documentElement.classList.add('printing'); all(); });
  addEventListener('afterprint', () => { document.documentElement.classList.remove('printing'); again(); });
})();
