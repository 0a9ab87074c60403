// Corners and border pointed at on a photo. The boxes below the photo hold the same points as numbers, for the keyboard.
(function () {
  'use strict';

  const SVG = 'http://www.w3.org/2000/svg';
  const stage = document.getElementById('stage');
  const picture = document.getElementById('picture');
  const boxes = { corners: document.getElementById('corners'), border: document.getElementById('border') };
  if (!stage) {
    return;
  }
  const drawing = document.createElementNS(SVG, 'svg');
  let held = null;
  let dragged = false;

  const what = () => document.querySelector('[name=what]:checked').value;
  const points = kind => boxes[kind].value.trim().split(/\s+/).filter(p => /^[\d.]+,[\d.]+$/.test(p)).map(p => p.split(',').map(Number));

  function set(kind, all) {
    boxes[kind].value = all.map(p => Math.round(p[0]) + ',' + Math.round(p[1])).join(' ');
    draw();
  }

  function made(name, attributes) {
    const element = document.createElementNS(SVG, name);
    Object.entries(attributes).forEach(([key, value]) => element.setAttribute(key, value));
    drawing.append(element);
    return element;
  }

  function draw() {
    drawing.replaceChildren();
    const radius = 9 * picture.naturalWidth / Math.max(1, picture.clientWidth);
    for (const kind of ['border', 'corners']) {
      const all = points(kind);
      if (all.length > 1) {
        made('polygon', { points: all.map(p => p.join(',')).join(' '), class: kind, 'stroke-width': radius / 3 });
      }
      all.forEach((p, i) => made('circle', { cx: p[0], cy: p[1], r: radius, class: kind, 'data-kind': kind, 'data-at': i,
        'stroke-width': radius / 3 }));
    }
    document.getElementById('pointed').textContent =
      points('corners').length + ' of 4 corners, ' + points('border').length + ' points of the border are set.';
  }

  function at(event) {
    const box = drawing.getBoundingClientRect();
    const inside = (x, most) => Math.min(most - 1, Math.max(0, x));
    return [inside((event.clientX - box.left) / box.width * picture.naturalWidth, picture.naturalWidth),
      inside((event.clientY - box.top) / box.height * picture.naturalHeight, picture.naturalHeight)];
  }

  function pressed(event) {
    const mark = event.target.closest('circle');
    if (mark) {
      held = { kind: mark.dataset.kind, at: Number(mark.dataset.at) };
      drawing.setPointerCapture(event.pointerId);
      event.preventDefault();
    }
  }

  function moved(event) {
    if (held) {
      const all = points(held.kind);
      all[held.at] = at(event);
      set(held.kind, all);
    }
  }

  // The click that ends a drag sets no point.
  function released() {
    dragged = held !== null;
    held = null;
    setTimeout(() => { dragged = false; });
  }

  function clicked(event) {
    if (dragged) {
      return;
    }
    const kind = what();
    const all = points(kind);
    if (kind === 'border' || all.length < 4) {
      set(kind, all.concat([at(event)]));
    }
  }

  function begin() {
    drawing.setAttribute('viewBox', '0 0 ' + picture.naturalWidth + ' ' + picture.naturalHeight);
    drawing.setAttribute('role', 'img');
    drawing.setAttribute('aria-label', 'The points that are set');
    stage.append(drawing);
    document.getElementById('tools').hidden = false;
    drawing.addEventListener('pointerdown', pressed);
    drawing.addEventListener('pointermove', moved);
    drawing.addEventListener('pointerup', released);
    drawing.addEventListener('pointercancel', released);
    drawing.addEventListener('click', clicked);
    document.getElementById('take-last').addEventListener('click', () => set(what(), points(what()).slice(0, -1)));
    document.getElementById('take-all').addEventListener('click', () => set(what(), []));
    const found = document.getElementById('take-found');
    found?.addEventListener('click', () => {
      boxes.corners.value = found.dataset.corners;
      boxes.border.value = found.dataset.border;
      draw();
    });
    Object.values(boxes).forEach(box => box.addEventListener('input', draw));
    addEventListener('resize', draw);
    draw();
  }

  if (picture.complete && picture.naturalWidth > 0) {
    begin();
  } else {
    picture.addEventListener('load', begin);
  }
})();
