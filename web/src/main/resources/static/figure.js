// Draws figures from their definitions, in the colors of the page. Every figure has a table behind it with the same
// values, so that a drawing is never the only way to them.
(function () {
  'use strict';

  const STROKES = {
    DASHED: [8, 5], SOLID: 'solid', DOTTED: [2, 4], DASH_DOT: [9, 4, 2, 4], LONG_DASH: [16, 5],
    DASH_DOT_DOT: [9, 4, 2, 4, 2, 4]
  };
  // Patterns that tell the parts apart without color.
  const PATTERNS = {
    PART_2: { symbol: 'rect', dashArrayX: [1, 0], dashArrayY: [2, 5], rotation: -Math.PI / 4 },
    PART_3: { symbol: 'circle', symbolSize: 0.6, dashArrayX: [[7, 7], [0, 7, 7, 0]], dashArrayY: [7, 0] },
    PART_4: { symbol: 'rect', dashArrayX: [1, 0], dashArrayY: [3, 4], rotation: 0 },
    PART_5: { symbol: 'rect', dashArrayX: [1, 0], dashArrayY: [2, 4], rotation: Math.PI / 4 },
    PART_6: { symbol: 'rect', dashArrayX: [2, 6], dashArrayY: [6, 2] },
    PART_7: { symbol: 'rect', dashArrayX: [1, 0], dashArrayY: [2, 4], rotation: Math.PI / 2 },
    CARRIED: { symbol: 'rect', dashArrayX: [1, 0], dashArrayY: [3, 4], rotation: -Math.PI / 4 },
    LOSS: { symbol: 'rect', dashArrayX: [1, 0], dashArrayY: [2, 5], rotation: -Math.PI / 4 }
  };
  const ROW = 58;
  const BAR = 16;
  const drawn = new Map();

  let style = null;
  const ink = name => style.getPropertyValue(name).trim();
  const tone = t => ink('--tone-' + t.toLowerCase().replace('_', '-'));
  const group = x => Math.round(Math.abs(x)).toString().replace(/\B(?=(\d{3})+$)/g, ',');
  const money = x => (Math.round(x) < 0 ? '−' : '') + group(x);

  function write(axis, x) {
    switch (axis.unit) {
      case 'NAME': return axis.names[x];
      case 'METER_HOURS': return group(x) + ' h';
      case 'MINUTES': return group(x) + ' min';
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
      type: 'value', name: axis.title, nameLocation: 'middle', nameGap: 30, splitNumber: narrow ? 3 : 6,
      nameTextStyle: { color: ink('--soft'), fontSize: 12 },
      axisLine: { show: false }, axisTick: { show: false },
      splitLine: { lineStyle: { color: ink('--line') } },
      axisLabel: { color: ink('--soft'), fontSize: 12, hideOverlap: true, formatter: x => write(axis, x) }
    };
  }

  // Upright lines are told of above the plot; a category axis that runs down has its start there.
  function marks(figure, vertical) {
    const end = vertical && figure.places.unit === 'NAME' ? 'start' : 'end';
    return {
      silent: true, symbol: 'none', animation: false,
      data: figure.marks.map((m, i) => ({
        [vertical ? 'xAxis' : 'yAxis']: m.value,
        lineStyle: { color: ink('--ink'), width: m.value === 0 ? 1.2 : 1, type: m.value === 0 ? 'solid' : [3, 3] },
        label: {
          show: m.label !== '', formatter: m.label, color: ink('--ink'), fontSize: 12, position: end,
          distance: [0, 4 + 14 * (i % 2)]
        }
      }))
    };
  }

  function lines(figure, width) {
    const option = common(figure);
    const narrow = width < 560;
    const strong = s => s.tone === 'CARRIED' || s.tone === 'CHOICE';
    option.legend.itemStyle = { opacity: 0 };
    option.grid = { left: 8, right: narrow ? 14 : 24, top: 26 * legendRows(figure, width) + 20, bottom: 44, containLabel: true };
    option.xAxis = Object.assign(valueAxis(figure.places, narrow), {
      min: figure.series[0].points[0].at, max: figure.series[0].points[figure.series[0].points.length - 1].at,
      splitLine: { show: false }, axisLine: { show: true, lineStyle: { color: ink('--edge') } }
    });
    option.yAxis = Object.assign(valueAxis(figure.values, narrow), { name: '' });
    option.tooltip.trigger = 'axis';
    option.tooltip.formatter = items => tip([write(figure.places, items[0].value[0]) + ' on the meter']
        .concat(items.filter((x, i) => items.findIndex(y => y.seriesName === x.seriesName) === i)
            .map(i => i.seriesName + ': ' + write(figure.values, i.value[1]) + edges(figure, i))));
    option.series = figure.series.map(s => s.shape === 'BAND' ? band(s) : ({
      type: 'line', name: s.name, symbol: 'none', z: strong(s) ? 4 : 2,
      lineStyle: { color: tone(s.tone), width: strong(s) ? 2.6 : 1.3, type: STROKES[s.stroke] },
      itemStyle: { color: tone(s.tone) },
      data: s.points.map(p => [p.at, p.value])
    }));
    return { option, height: (narrow ? 280 : 330) + 26 * legendRows(figure, width) };
  }

  // What lies between two edges: told apart by the edges and the shade, not by color alone.
  function band(s) {
    const bare = s.tone === 'CARRIED';
    return {
      type: 'custom', name: s.name, silent: true, z: 1, clip: true, tooltip: { show: false }, encode: { x: 0, y: [1, 2] },
      itemStyle: { color: tone(s.tone) },
      data: s.points.map(p => [p.at, p.span.from, p.span.to]),
      renderItem: (params, api) => {
        if (params.dataIndexInside > 0) {
          return null;
        }
        const low = s.points.map(p => api.coord([p.at, p.span.from]));
        const high = s.points.map(p => api.coord([p.at, p.span.to]));
        const edge = points => ({ type: 'polyline', shape: { points },
          style: { stroke: tone(s.tone), lineWidth: 1, lineDash: bare ? [3, 3] : null, fill: 'none' } });
        const shade = { type: 'polygon', shape: { points: low.concat(high.slice().reverse()) },
          style: { fill: tone(s.tone), opacity: 0.16 } };
        return { type: 'group', children: (bare ? [] : [shade]).concat([edge(low), edge(high)]) };
      }
    };
  }

  // The edges beside a value of a line, where it has them.
  function edges(figure, item) {
    const around = figure.series.find(s => s.shape === 'BAND' && s.name === item.seriesName);
    const point = around && around.points.find(p => p.at === item.value[0]);
    return point ? ' (' + write(figure.values, point.span.from) + ' to ' + write(figure.values, point.span.to) + ')' : '';
  }

  // How many lines a legend takes; names are about 7 pixels a letter.
  function legendRows(figure, width) {
    let rows = 1;
    let used = 0;
    for (const s of figure.series.filter(each => each.shape !== 'BAND')) {
      const wide = 50 + 7.1 * s.name.length;
      if (used > 0 && used + wide > width) {
        rows++;
        used = 0;
      }
      used += wide;
    }
    return rows;
  }

  // Names stand above their bars, at the very left.
  function rowAxis(figure, width, side) {
    return {
      type: 'category', inverse: true, data: figure.places.names, axisLine: { show: false },
      axisTick: { show: false }, splitLine: { show: false },
      axisLabel: {
        inside: true, margin: -side, color: ink('--ink'), fontSize: 13, lineHeight: 16, align: 'left', verticalAlign: 'bottom',
        padding: [0, 0, BAR + 2, 0], formatter: name => '{name|' + name.replace(/[{}|]/g, ' ') + '}',
        rich: { name: { backgroundColor: ink('--paper'), padding: [2, 6, 2, 0], fontSize: 13, lineHeight: 16 } }, width: width - 16, overflow: 'truncate', interval: 0
      }, z: 5
    };
  }

  // Above the rows: for the labels of marks, on one line or two.
  function room(figure) {
    return 8 + 18 * figure.marks.filter(m => m.label !== '').length;
  }

  function stacked(figure, width) {
    const option = common(figure);
    const rows = figure.places.names.length;
    const top = (figure.series.length > 1 ? 26 * legendRows(figure, width) : 0) + room(figure);
    const side = width < 560 ? 18 : 30;
    if (figure.series.length === 1) {
      option.legend.show = false;
    }
    option.grid = { left: side, right: side, top, bottom: 44 };
    option.xAxis = valueAxis(figure.values, width < 560);
    option.yAxis = rowAxis(figure, width, side);
    option.tooltip.formatter = i => tip([figure.places.names[i.value[1]], i.seriesName + ': ' + write(figure.values, i.value[0])]);
    option.series = figure.series.map((s, k) => ({
      type: 'bar', name: s.name, stack: 'all', barWidth: BAR,
      itemStyle: { color: tone(s.tone), decal: decal(s.tone), borderColor: ink('--paper'), borderWidth: 1 },
      label: figure.series.length < 3
          ? { show: true, position: s.tone === 'LOSS' ? 'left' : 'right', color: ink('--ink'), formatter: i => money(i.value[0]) }
          : { show: false },
      markLine: k === 0 ? marks(figure, true) : undefined,
      data: s.points.map(p => [p.value, p.at])
    }));
    return { option, height: top + rows * ROW + 44 };
  }

  function bars(figure, width) {
    const option = common(figure);
    const narrow = width < 560;
    const top = 26 * legendRows(figure, width) + 34;
    option.grid = { left: 8, right: 16, top, bottom: 44, containLabel: true };
    option.yAxis = Object.assign(valueAxis(figure.values, narrow), { name: '' });
    const named = figure.places.unit === 'NAME';
    option.xAxis = named
        ? { type: 'category', data: figure.places.names, axisTick: { show: false }, axisLine: { lineStyle: { color: ink('--edge') } },
          axisLabel: { color: ink('--soft'), fontSize: 12 } }
        : Object.assign(valueAxis(figure.places, narrow), { scale: true, splitLine: { show: false } });
    option.tooltip.formatter = i => named
        ? tip([figure.places.names[i.dataIndex], i.seriesName + ': ' + write(figure.values, i.value)])
        : tip([write(figure.places, i.value[0]) + ' to ' + write(figure.places, i.value[1]), write(figure.values, i.value[2])]);
    option.series = figure.series.map((s, k) => Object.assign(
        named ? namedBars(s) : steps(s), { markLine: k === 0 ? marks(figure, !named) : undefined }));
    return { option, height: top + (narrow ? 200 : 230) + 44 };
  }

  function namedBars(s) {
    return s.shape === 'LINE'
        ? { type: 'line', name: s.name, symbol: 'circle', symbolSize: 7, z: 4, color: tone(s.tone),
          lineStyle: { color: tone(s.tone), width: 2, type: STROKES[s.stroke] }, data: s.points.map(p => p.value) }
        : { type: 'bar', name: s.name, barMaxWidth: 34, itemStyle: { color: tone(s.tone), decal: decal(s.tone) },
          data: s.points.map(p => p.value) };
  }

  function steps(s) {
    return {
      type: 'custom', name: s.name, itemStyle: { color: tone(s.tone) }, encode: { x: [0, 1], y: 2 },
      data: s.points.map(p => [p.span.from, p.span.to, p.value]),
      renderItem: (params, api) => {
        const a = api.coord([api.value(0), api.value(2)]);
        const b = api.coord([api.value(1), 0]);
        return { type: 'rect', shape: { x: a[0] + 0.5, y: a[1], width: Math.max(1, b[0] - a[0] - 1), height: b[1] - a[1] },
          style: { fill: tone(s.tone) } };
      }
    };
  }

  function spans(figure, width, inside) {
    const option = common(figure);
    const rows = figure.places.names.length;
    option.legend.show = false;
    const top = room(figure);
    const side = inside ? 18 : Math.min(86, width / 5);
    option.grid = { left: side, right: side, top, bottom: 44 };
    option.xAxis = Object.assign(valueAxis(figure.values, width < 560), inside ? { min: 0 } : { scale: true });
    option.yAxis = rowAxis(figure, width, side);
    option.tooltip.formatter = i => tip([figure.places.names[i.value[0]], i.seriesName,
      write(figure.values, i.value[1]) + (i.data.fromNote ? ' at ' + i.data.fromNote : '') + ' to '
        + write(figure.values, i.value[2]) + (i.data.toNote ? ' at ' + i.data.toNote : '')]);
    option.series = figure.series.map((s, k) => ({
      type: 'custom', name: s.name, encode: { x: [1, 2, 3], y: 0 }, itemStyle: { color: tone(s.tone) },
      markLine: k === 0 ? marks(figure, true) : undefined,
      data: s.points.map(p => ({
        value: [p.at, p.span.from, p.span.to, p.value], fromNote: p.span.fromNote, toNote: p.span.toNote
      })),
      renderItem: (params, api) => inside ? named(s, api) : range(s, figure, params, api)
    }));
    return { option, height: top + rows * ROW + 44 };
  }

  function place(api) {
    const y = api.coord([0, api.value(0)])[1];
    return { y, from: api.coord([api.value(1), api.value(0)])[0], to: api.coord([api.value(2), api.value(0)])[0] };
  }

  function named(s, api) {
    const { y, from, to } = place(api);
    const loud = s.tone === 'CARRIED' || s.tone === 'CHOICE' || s.tone === 'LOSS';
    const text = s.name + ', ' + Math.round(api.value(2) - api.value(1)) + ' min';
    const fits = to - from > 7.2 * text.length;
    return { type: 'group', children: [
      { type: 'rect', shape: { x: from, y: y - BAR / 2, width: Math.max(2, to - from - 1), height: BAR + 6 }, style: { fill: tone(s.tone) } },
      { type: 'text', x: fits ? from + 6 : to + 6, y: y + 3,
        style: { text: fits || s.tone !== 'CHOICE' ? text : '', fill: fits && loud ? ink('--paper') : ink('--ink'),
          font: '12px ' + ink('--sans'), verticalAlign: 'middle' } }
    ] };
  }

  function range(s, figure, params, api) {
    const { y, from, to } = place(api);
    const mean = api.coord([api.value(3), api.value(0)])[0];
    const point = s.points[params.dataIndex];
    const left = Math.min(from, to);
    const leftNote = from <= to ? point.span.fromNote : point.span.toNote;
    const rightNote = from <= to ? point.span.toNote : point.span.fromNote;
    const note = (x, text, align) => ({ type: 'text', x, y, style: { text, fill: ink('--soft'), font: '12px ' + ink('--sans'),
      textAlign: align, verticalAlign: 'middle' } });
    return { type: 'group', children: [
      { type: 'rect', shape: { x: left, y: y - 5, width: Math.max(1, Math.abs(to - from)), height: 10 }, style: { fill: tone('QUIET') } },
      { type: 'rect', shape: { x: mean - 1.5, y: y - 9, width: 3, height: 18 }, style: { fill: tone(s.tone) } },
      note(left - 6, leftNote, 'right'), note(Math.max(from, to) + 6, rightNote, 'left')
    ] };
  }

  function option(figure, width) {
    switch (figure.kind) {
      case 'LINES': return lines(figure, width);
      case 'STACKED': return stacked(figure, width);
      case 'BARS': return bars(figure, width);
      case 'TIMELINE': return spans(figure, width, true);
      default: return spans(figure, width, false);
    }
  }

  function draw(element) {
    const box = element.querySelector('.drawing');
    const width = box.clientWidth;
    if (width === 0) {
      return;
    }
    style = getComputedStyle(document.documentElement);
    const { option: wanted, height } = option(JSON.parse(element.dataset.figure), width);
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
