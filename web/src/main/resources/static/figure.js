// Draws figures from their definitions, in the colors of the page. Every figure has a table behind it with the same
// values, so that a drawing is never the only way to them. What is drawn says figure-option.js.
(function () {
  'use strict';

  const drawn = new Map();
  let style = null;
  const look = { ink: name => style.getPropertyValue(name).trim(), tip, row: 58 };

  // Tooltips are elements, as the page's policy allows no styles in text.
  function tip(lines) {
    const box = document.createElement('div');
    box.className = 'tip';
    lines.forEach((line, i) => {
      const p = document.createElement(i === 0 ? 'strong' : 'span');
      p.textContent = line;
      box.append(p);
    });
    return box;
  }

  function draw(element) {
    const box = element.querySelector('.drawing');
    const width = box.clientWidth;
    if (width === 0) {
      return;
    }
    style = getComputedStyle(document.documentElement);
    const { option: wanted, height } = figureOption(JSON.parse(element.dataset.figure), width, look);
    let chart = drawn.get(box);
    box.style.height = height + 'px';
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
      if (drawn.has(box) && box.footingSource !== source) {
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
