(function () {
  "use strict";
  var box = document.getElementById("find");
  var found = document.getElementById("found");
  var all = Array.prototype.slice.call(document.querySelectorAll("[data-entry]"));
  var texts = all.map(function (entry) {
    var head = entry.querySelector("[data-name]");
    return (head ? head : entry).textContent.toLowerCase();
  });
  function filter() {
    var wanted = box.value.trim().toLowerCase();
    var shown = 0;
    all.forEach(function (entry, i) {
      var hit = texts[i].indexOf(wanted) !== -1;
      entry.classList.toggle("away", !hit);
      shown += hit ? 1 : 0;
    });
    found.textContent = wanted === "" ? "" : shown + " of " + all.length + " entries";
  }
  function openAll(which, open) {
    document.querySelectorAll(which).forEach(function (d) { d.open = open; });
  }
  function reveal() {
    var target = location.hash === "" ? null : document.getElementById(location.hash.slice(1));
    if (target instanceof HTMLDetailsElement) {
      target.classList.remove("away");
      target.open = true;
      target.scrollIntoView();
    }
  }
  box.addEventListener("input", filter);
  document.getElementById("open-urgent").addEventListener("click", function () {
    openAll("details.urgent", true);
  });
  document.getElementById("close-all").addEventListener("click", function () {
    openAll("details", false);
  });
  window.addEventListener("hashchange", reveal);
  document.querySelectorAll(".script-only").forEach(function (e) { e.hidden = false; });
  reveal();
})();
