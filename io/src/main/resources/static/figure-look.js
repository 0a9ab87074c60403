// What all figures share: colors of the page, strokes and patterns that tell series apart without color, axes, marks, and
// how values are written.
(function () {
  'use strict';

  const STROKES = {
    DASHED: [8, 5], SOLID: 'solid', DOTTED: [2, 4], DASH_DOT: [9, 4, 2, 4], LONG_DASH: [16, 5],
    DASH_DOT_DOT: [9, 4, 2, 4, 2, 4]
  };
  // Patterns that tell the parts apart without color.
  const PATTERNS = {
    PART_2: { symbol: 'rect', dashArrayX: [8, 0], dashArrayY: [2, 5], rotation: -Math.PI / 4 },
    PART_3: { symbol: 'circle', symbolSize: 0.6, dashArrayX: [[7, 7], [0, 7, 7, 0]], dashArrayY: [7, 0] },
    PART_4: { symbol: 'rect', dashArrayX: [8, 0], dashArrayY: [3, 4], rotation: 0 },
    PART_5: { symbol: 'rect', dashArrayX: [8, 0], dashArrayY: [2, 4], rotation: Math.PI / 4 },
    PART_6: { symbol: 'rect', dashArrayX: [2, 6], dashArrayY: [6, 2] },
    PART_7: { symbol: 'rect', dashArrayX: [8, 0], dashArrayY: [2, 4], rotation: Math.PI / 2 },
    CARRIED: { symbol: 'rect', dashArrayX: [8, 0], dashArrayY: [3, 4], rotation: -Math.PI / 4 },
    LOSS: { symbol: 'rect', dashArrayX: [8, 0], dashArrayY: [2, 5], rotation: -Math.PI / 4 }
  };
  const ROW = 58;
  const BAR = 16;

  let style = null;
  const ink = name => style.getPropertyValue(name).trim();
  const tone = t => ink('--tone-' + t.toLowerCase().replace('_', '-'));
  const group = x => Math.round(Math.abs(x)).toString().replace(/\B(?=(\d{3})+$)/g, ',');
  const money = x => (Math.round(x) < 0 ? '−' : '') + group(x);

  function write(axis, x) {
    switch (axis.unit) {
      case 'NAME': return axis.names[x];
      case 'METER_HOURS': case 'HOURS': return group(x) + ' h';
      case 'RATE': return Math.abs(x) < 9.95 ? String(Math.round(10 * x) / 10) : group(x);
      case 'MINUTES': return group(x) + ' min';
      case 'MEASURED': return String(Number(x.toPrecision(3))).replace('-', '−');
      case 'SHARE': return Math.round(1000 * x) / 10 + ' %';
      default: return money(x);
    }
  }

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

  function decal(t) {
    const pattern = PATTERNS[t];
    return pattern ? Object.assign({ color: ink('--pattern') }, pattern) : { symbol: 'none' };
  }

  function common(figure) {
    return {
      animation: false,
      textStyle: { fontFamily: ink('--sans'), color: ink('--ink') },
      aria: { enabled: false },
      tooltip: {
        trigger: 'item', confine: true, backgroundColor: ink('--paper'), borderColor: ink('--edge'),
        textStyle: { color: ink('--ink'), fontSize: 13 }, extraCssText: 'box-shadow: none'
      },
      legend: {
        top: 3, left: 0, itemWidth: 30, itemHeight: 11, itemGap: 14, padding: 0, selectedMode: false,
        textStyle: { color: ink('--ink'), fontSize: 13 },
        data: figure.series.filter(s => s.points.length && s.shape !== 'BAND').map(s => ({ name: s.name }))
      }
    };
  }

  function valueAxis(axis, narrow) {
    return {
      type: 'value', name: axis.title, nameLocation: 'middle', nameGap: 32, splitNumber: narrow ? 3 : 6,
      nameTextStyle: { color: ink('--soft'), fontSize: 12 },
      axisLine: { show: false }, axisTick: { show: false },
      splitLine: { lineStyle: { color: ink('--line') } },
      axisLabel: { color: ink('--soft'), fontSize: 12, margin: 12, hideOverlap: true, formatter: x => write(axis, x) }
    };
  }

  // Near an end of its axis a label runs inwards.
  function inwards(figure, value) {
    const all = figure.series.flatMap(s => s.points)
        .flatMap(p => figure.places.unit === 'NAME' ? (p.span ? [p.span.from, p.span.to] : [p.value]) : [p.at])
        .concat(figure.marks.map(m => m.value));
    const least = all.reduce((a, b) => Math.min(a, b));
    const share = (value - least) / (all.reduce((a, b) => Math.max(a, b)) - least || 1);
    return share > 0.92 ? 'right' : share < 0.08 ? 'left' : 'center';
  }

  // Upright lines are told of above the plot, clear of the rows' names; an axis that runs down has its start there.
  function marks(figure, vertical) {
    const rows = vertical && figure.places.unit === 'NAME';
    const end = rows ? 'start' : 'end';
    return {
      silent: true, symbol: 'none', animation: false,
      data: figure.marks.map((m, i) => ({
        [vertical ? 'xAxis' : 'yAxis']: m.value,
        lineStyle: { color: ink('--ink'), width: m.value === 0 ? 1.2 : 1, type: m.value === 0 ? 'solid' : [3, 3] },
        label: {
          show: m.label !== '', formatter: m.label, color: ink('--ink'), fontSize: 12, position: end,
          distance: [0, (rows ? 8 : 4) + 14 * (i % 2)], align: vertical ? inwards(figure, m.value) : undefined
        }
      }))
    };
  }

  // How many lines a legend takes; names are about 7 pixels a letter.
  function legendRows(figure, width) {
    let rows = 1;
    let used = 0;
    figure.series.filter(s => s.shape !== 'BAND').forEach(s => {
      const wide = 50 + 7.1 * s.name.length;
      if (used > 0 && used + wide > width) {
        rows++;
        used = 0;
      }
      used += wide;
    });
    return rows;
  }

  // A name on as many lines as it needs, of about 7 pixels a letter.
  function nameLines(name, width) {
    const most = Math.max(12, Math.floor((width - 16) / 7.2));
    const lines = [''];
    name.replace(/[{}|]/g, ' ').split(' ').forEach(word => {
      const last = lines.length - 1;
      if (lines[last] !== '' && lines[last].length + 1 + word.length > most) {
        lines.push(word);
      } else {
        lines[last] += (lines[last] === '' ? '' : ' ') + word;
      }
    });
    return lines;
  }

  // Bars stand in the middle of their rows: what a name of several lines takes above, the row has below as well.
  function rowHeight(figure, width) {
    return ROW + 32 * (figure.places.names.reduce((most, name) => Math.max(most, nameLines(name, width).length), 1) - 1);
  }

  // Names stand above their bars, at the very left.
  function rowAxis(figure, width, side) {
    return {
      type: 'category', inverse: true, data: figure.places.names, axisLine: { show: false },
      axisTick: { show: false }, splitLine: { show: false },
      axisLabel: {
        inside: true, margin: -side, color: ink('--ink'), fontSize: 13, lineHeight: 16, align: 'left', verticalAlign: 'bottom',
        padding: [0, 0, BAR + 2, 0], formatter: name => nameLines(name, width).map(line => '{name|' + line + '}').join('\n'),
        rich: { name: { backgroundColor: ink('--paper'), padding: [2, 6, 2, 0], fontSize: 13, lineHeight: 16 } }, interval: 0
      }, z: 6
    };
  }

  // Above the rows: for the labels of marks, on one line or two.
  function room(figure) {
    const labels = figure.marks.filter(m => m.label !== '').length;
    return 8 + (labels > 0 ? 6 + 16 * labels : 0);
  }

  // Takes the colors in force now: on the page its own, on paper those that are given.
  function dip() {
    style = window.footingColors ? window.footingColors : getComputedStyle(document.documentElement);
  }

  window.footingLook = {
    STROKES, BAR, dip, ink, tone, group, money, write, tip, decal, common, valueAxis, marks, legendRows, rowAxis, room,
    rowHeight
  };
})();
