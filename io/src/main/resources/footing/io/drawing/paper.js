// What the charting library expects of a browser, and how a figure is drawn on paper.
var window = {};
var self = window;
var setTimeout = function () { return 0; };
var clearTimeout = function () {};
window.footingColors = { getPropertyValue: name => inks[name] || '' };
var console = { log: function () {}, warn: function () {}, error: function () {} };

function drawFigure(json, width) {
  'use strict';
  const wanted = window.footingFigure.option(JSON.parse(json), width);
  echarts.setPlatformAPI({
    measureText: (text, font) => ({ width: textWidth(text) * (parseFloat(/([0-9.]+)px/.exec(font)[1]) || 12) })
  });
  const chart = echarts.init(null, null, { renderer: 'svg', ssr: true, width: width, height: wanted.height });
  chart.setOption(wanted.option);
  const svg = chart.renderToSVGString();
  chart.dispose();
  return { svg: svg, height: wanted.height };
}
