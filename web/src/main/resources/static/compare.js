// The compare page: draws the figures of a comparison that took a while, and says that it is there.
(function () {
  'use strict';

  document.addEventListener('htmx:afterSwap', () => {
    const sentence = document.getElementById('told');
    if (sentence) {
      document.getElementById('said').textContent = sentence.textContent;
    }
    document.dispatchEvent(new CustomEvent('footing:swapped'));
  });
})();
