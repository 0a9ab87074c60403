// Flats and meter readings written down in the field; queue.js keeps them until the server has them. Without scripts the
// form is sent as forms are.
(function () {
  'use strict';

  const form = document.getElementById('log');
  const MACHINE = 'footing-machine-' + form.dataset.case;

  function today() {
    const now = new Date();
    const two = n => String(n).padStart(2, '0');
    return now.getFullYear() + '-' + two(now.getMonth() + 1) + '-' + two(now.getDate());
  }

  function words(fields) {
    const flat = fields.event !== 'reading';
    return [(flat ? 'Flat on ' : 'Meter of ') + fields.machine, flat && fields.position, flat && fields.fix,
      flat && fields.minutes && fields.minutes + ' min', fields.hours && 'at ' + fields.hours + ' h', fields.date]
        .filter(Boolean).join(', ');
  }

  // What is plainly lacking is said at once, without the line.
  function lacks(fields) {
    if (!fields.machine) {
      return 'Choose a machine.';
    }
    return fields.event === 'reading' && !fields.hours.trim() ? 'A reading needs the hours on the meter.' : '';
  }

  // Leaves what and which machine as they were: the next row is often alike.
  function clear(fields) {
    footingQueue.remember(MACHINE, fields.machine);
    form.querySelectorAll('[name=position]:checked, [name=fix]:checked').forEach(r => { r.checked = false; });
    form.elements.hours.value = '';
    form.elements.minutes.value = '';
    form.elements.date.value = today();
  }

  function refill(fields) {
    Object.entries(fields).filter(([name]) => name !== 'sentAs').forEach(([name, value]) => {
      form.elements[name].value = value;
    });
  }

  function showMeter() {
    const meter = form.querySelector('[name=machine]:checked')?.dataset.meter;
    document.getElementById('meter').textContent = meter ? 'last ' + meter : '';
  }

  const before = footingQueue.recall(MACHINE);
  const key = before && Array.from(form.querySelectorAll('[name=machine]')).find(r => r.value === before);
  if (key && key.type === 'radio') {
    key.checked = true;
  }
  form.addEventListener('change', showMeter);
  showMeter();
  footingQueue('footing-log-' + form.dataset.case, { words, lacks, clear, refill }).start();
})();
