// Turns figures, as they are defined, into what ECharts draws: one function for each kind.
(function () {
  'use strict';

  const {
    STROKES, BAR, dip, ink, tone, group, money, write, tip, decal, common, valueAxis, marks, legendRows, rowAxis, room,
    rowHeight
  } = window.footingLook;

  function lines(figure, width) {
    const option = common(figure);
    const narrow = width < 560;
    const strong = s => s.tone === 'CARRIED' || s.tone === 'CHOICE';
    option.legend.itemStyle = { opacity: 0 };
    option.grid = { left: 8, right: narrow ? 14 : 24, top: 26 * legendRows(figure, width) + 20, bottom: 46, containLabel: true };
    option.xAxis = Object.assign(valueAxis(figure.places, narrow), {
      min: figure.series[0].points[0].at, max: figure.series[0].points[figure.series[0].points.length - 1].at,
      splitLine: { show: false }, axisLine: { show: true, lineStyle: { color: ink('--edge') } }
    });
    option.yAxis = Object.assign(valueAxis(figure.values, narrow), { name: '' });
    option.tooltip.trigger = 'axis';
    option.tooltip.formatter = items => tip([write(figure.places, items[0].value[0]) + (figure.places.unit === 'METER_HOURS' ? ' on the meter' : '')]
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

  function stacked(figure, width) {
    const option = common(figure);
    const rows = figure.places.names.length;
    const top = (figure.series.length > 1 ? 26 * legendRows(figure, width) : 0) + room(figure);
    const side = width < 560 ? 18 : 30;
    if (figure.series.length === 1) {
      option.legend.show = false;
    }
    option.grid = { left: side, right: side, top, bottom: 46 };
    option.xAxis = valueAxis(figure.values, width < 560);
    option.yAxis = rowAxis(figure, width, side);
    option.tooltip.formatter = i => tip([figure.places.names[i.value[1]], i.seriesName + ': ' + write(figure.values, i.value[0])]);
    option.series = figure.series.map((s, k) => ({
      type: 'bar', name: s.name, stack: 'all', barWidth: BAR,
      itemStyle: { color: tone(s.tone), decal: decal(s.tone), borderColor: ink('--paper'), borderWidth: 1 },
      label: figure.series.length < 3
          ? { show: true, position: s.tone === 'LOSS' ? 'left' : 'right', color: ink('--ink'), backgroundColor: ink('--paper'), padding: [1, 3], formatter: i => money(i.value[0]) }
          : { show: false },
      markLine: k === 0 ? marks(figure, true) : undefined,
      data: s.points.map(p => [p.value, p.at])
    }));
    return { option, height: top + rows * rowHeight(figure, width) + 46 };
  }

  function bars(figure, width) {
    const option = common(figure);
    const narrow = width < 560;
    const top = 26 * legendRows(figure, width) + 34;
    option.grid = { left: 8, right: 16, top, bottom: 46, containLabel: true };
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
    return { option, height: top + (narrow ? 200 : 230) + 46 };
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
    option.grid = { left: side, right: side, top, bottom: 46 };
    option.xAxis = Object.assign(valueAxis(figure.values, width < 560), inside ? { min: 0 } : { scale: true });
    if (inside) {
      option.xAxis.axisLabel.formatter = group;
    }
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
    return { option, height: top + rows * rowHeight(figure, width) + 46 };
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
      textAlign: align, verticalAlign: 'middle', backgroundColor: ink('--paper'), padding: [1, 3] } });
    const whole = { type: 'rect', shape: { x: left, y: y - 5, width: Math.max(1, Math.abs(to - from)), height: 10 },
      style: { fill: tone('QUIET') } };
    const middle = { type: 'rect', shape: { x: mean - 1.5, y: y - 9, width: 3, height: 18 }, style: { fill: tone(s.tone) } };
    const notes = [note(left - 3, leftNote, 'right'), note(Math.max(from, to) + 3, rightNote, 'left')];
    return { type: 'group', children: [whole].concat(turned(api, point, y, left, Math.max(from, to)), [middle], notes) };
  }

  // The part of a range that lies beyond zero from where it is now: there the change turns.
  function turned(api, point, y, left, right) {
    const zero = Math.min(right, Math.max(left, api.coord([0, api.value(0)])[0]));
    const gains = point.value >= 0;
    const from = gains ? left : zero;
    const wide = gains ? zero - left : right - zero;
    return wide < 1 ? [] : [{ type: 'rect', shape: { x: from, y: y - 5, width: wide, height: 10 },
      style: { fill: tone(gains ? 'LOSS' : 'GAIN') } }];
  }

  // A line for each place, from the first series at the left to the second at the right.
  function pairs(figure, width) {
    const option = common(figure);
    const [left, right] = figure.series;
    option.legend.show = false;
    option.grid = { left: 30, right: 16, top: 16, bottom: 24, containLabel: true };
    option.xAxis = {
      type: 'category', data: [left.name, right.name], boundaryGap: true, axisTick: { show: false },
      axisLine: { lineStyle: { color: ink('--edge') } },
      axisLabel: { color: ink('--ink'), fontSize: 13, interval: 0, width: width / 2 - 40, overflow: 'break' }
    };
    option.yAxis = Object.assign(valueAxis(figure.values, width < 560), { scale: true, nameGap: 48 });
    option.tooltip.formatter = i => tip([figure.places.names[i.seriesIndex]]
        .concat(figure.series.map(s => s.name + ': ' + write(figure.values, s.points[i.seriesIndex].value))));
    option.series = left.points.map((p, k) => ({
      type: 'line', name: figure.places.names[p.at], symbol: 'circle', symbolSize: 7, color: tone(right.tone),
      lineStyle: { width: 1.6, type: right.points[k].value < p.value ? STROKES.DASHED : 'solid' },
      data: [p.value, right.points[k].value]
    }));
    return { option, height: width < 560 ? 300 : 360 };
  }

  function option(figure, width) {
    dip();
    switch (figure.kind) {
      case 'LINES': return lines(figure, width);
      case 'STACKED': return stacked(figure, width);
      case 'BARS': return bars(figure, width);
      case 'PAIRS': return pairs(figure, width);
      case 'TIMELINE': return spans(figure, width, true);
      default: return spans(figure, width, false);
    }
  }

  window.footingFigure = { option };
})();
