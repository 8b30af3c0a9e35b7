/*<![CDATA[*/
(function () {
  "use strict";
  function byId(id) { return document.getElementById(id); }
  function list(selector, within) {
    return Array.prototype.slice.call((within || document).querySelectorAll(selector));
  }
  function parts(text) {
    return (text || "").split(", ").filter(function (t) { return t !== "" && t !== "none"; });
  }

  /* Find and show: an entry is shown if it holds the words and is of the kind asked for. */
  var box = byId("find");
  var only = byId("only");
  var found = byId("found");
  var all = list("[data-entry]");
  var texts = all.map(function (entry) {
    var head = entry.querySelector("[data-head]");
    return (head ? head : entry).textContent.toLowerCase();
  });
  var levels = {
    "call-now": "call now", "call-today": "call today", "ask": "waiting for an answer",
    "note": "note, no call", "standing": "told before", "none": "nothing to say"
  };
  var kinds = all.map(function (entry) {
    var d = entry.dataset;
    if (d.entry === "horse") {
      return ["Horses: " + (levels[d.level] || d.level)].concat(
        parts(d.groups).map(function (g) { return "Horses of group " + g; }));
    }
    if (d.entry === "lot") {
      return [].concat(
        parts(d.suits).map(function (g) { return "Lots that clear for " + g; }),
        parts(d.not).map(function (g) { return "Lots not for " + g; }),
        parts(d.open).map(function (g) { return "Lots undecided for " + g; }));
    }
    return d.entry === "call" && d.adviser ? ["Calls of " + d.adviser] : [];
  });
  var choices = [];
  kinds.forEach(function (of) {
    of.forEach(function (k) { if (choices.indexOf(k) === -1) { choices.push(k); } });
  });
  choices.forEach(function (choice) {
    var option = document.createElement("option");
    option.value = choice;
    option.textContent = choice;
    only.appendChild(option);
  });
  function filter() {
    var wanted = box.value.trim().toLowerCase();
    var kind = only.value;
    var shown = 0;
    all.forEach(function (entry, i) {
      var hit = texts[i].indexOf(wanted) !== -1 && (kind === "" || kinds[i].indexOf(kind) !== -1);
      if (hit) { entry.classList.remove("away"); } else { entry.classList.add("away"); }
      shown += hit ? 1 : 0;
    });
    var quiet = wanted === "" && kind === "";
    found.textContent = quiet ? "" : shown + " of " + all.length + " entries";
  }
  box.addEventListener("input", filter);
  only.addEventListener("change", filter);

  /* Sort: entries within their own list; what has no number stands last. */
  all.forEach(function (entry, i) { entry.dataset.place = String(i); });
  function compare(a, b) {
    var x = parseFloat(a);
    var y = parseFloat(b);
    if (!isNaN(x) && !isNaN(y)) { return x - y; }
    if (isNaN(x) !== isNaN(y) && (a === "" || b === "")) { return a === "" ? 1 : -1; }
    return a < b ? -1 : a > b ? 1 : 0;
  }
  function key(entry, by) {
    return by === "name" || by === "client" ? (entry.dataset[by] || "").toLowerCase()
      : entry.dataset[by] || "";
  }
  function arrange(entries, by, most) {
    var sorted = entries.slice().sort(function (a, b) {
      var x = key(a, by);
      var y = key(b, by);
      var c = x !== "" && y !== "" && most ? compare(y, x) : compare(x, y);
      return c !== 0 ? c : a.dataset.place - b.dataset.place;
    });
    var marks = entries.map(function (entry) {
      var mark = document.createComment("");
      entry.parentNode.replaceChild(mark, entry);
      return mark;
    });
    sorted.forEach(function (entry, i) { marks[i].parentNode.replaceChild(entry, marks[i]); });
  }
  byId("order").addEventListener("change", function () {
    arrange(list("[data-entry=lot]"), "place", false);
    arrange(list("[data-entry=horse]"), "place", false);
    var wanted = this.value.split(":");
    if (wanted[0] === "lot") {
      arrange(list("[data-entry=lot]"), wanted[1], wanted[1] === "stock");
    } else if (wanted[0] === "horse") {
      Object.keys(levels).forEach(function (level) {
        arrange(list("[data-entry=horse][data-level=" + level + "]"), wanted[1],
          wanted[1] === "chance");
      });
    }
  });

  /* Tables: a heading sorts its column, again the other way round. */
  list("table").forEach(function (table) {
    var body = table.tBodies[0];
    if (!body || body.rows.length < 4) { return; }
    list("thead th", table).forEach(function (head, column) {
      if (head.querySelector(".soft") || head.textContent === "Picture") { return; }
      var button = document.createElement("button");
      button.type = "button";
      button.className = "sort";
      button.textContent = head.textContent;
      head.textContent = "";
      head.appendChild(button);
      button.addEventListener("click", function () {
        var down = head.getAttribute("aria-sort") === "ascending";
        list("thead th", table).forEach(function (h) { h.removeAttribute("aria-sort"); });
        head.setAttribute("aria-sort", down ? "descending" : "ascending");
        var rows = Array.prototype.slice.call(body.rows);
        var cells = rows.map(function (row) {
          return (row.cells[column] ? row.cells[column].textContent : "").trim();
        });
        var order = rows.map(function (row, i) { return i; });
        order.sort(function (i, j) {
          var c = compare(cells[i], cells[j]);
          return c !== 0 ? (down ? -c : c) : i - j;
        });
        order.forEach(function (i) { body.appendChild(rows[i]); });
      });
    });
  });

  /* Open and close. */
  function openAll(which, open) {
    list(which).forEach(function (d) { d.open = open; });
  }
  byId("open-urgent").addEventListener("click", function () { openAll("details.urgent", true); });
  byId("open-all").addEventListener("click", function () {
    openAll("details[data-entry]:not(.away), [data-entry]:not(.away) details", true);
  });
  byId("close-all").addEventListener("click", function () { openAll("details", false); });
  function reveal() {
    var target = location.hash === "" ? null : byId(location.hash.slice(1));
    if (target && target.tagName === "DETAILS") {
      target.classList.remove("away");
      target.open = true;
      target.scrollIntoView();
    }
  }
  window.addEventListener("hashchange", reveal);

  /* The calls alone on paper; with 'Calls of' chosen, those of one adviser. */
  byId("print-calls").addEventListener("click", function () {
    document.body.classList.add("calls-alone");
    window.print();
    document.body.classList.remove("calls-alone");
  });

  /* What was ticked, as rows of decisions.csv. Nothing leaves the page but by hand. */
  var text = byId("told-text");
  var kept = true;
  function cell(value) {
    var line = value.replace(/\s+/g, " ").trim();
    var safe = /^'*[=+\-@]/.test(line) ? "'" + line : line;
    return /[",\r\n]/.test(safe) ? '"' + safe.replace(/"/g, '""') + '"' : safe;
  }
  function toldRows() {
    var by = byId("told-by").value;
    return list(".told").filter(function (item) {
      return item.querySelector("input[type=checkbox]").checked;
    }).map(function (item) {
      var d = item.dataset;
      var note = item.querySelector(".note").value;
      return [d.date, d.about, "told", d.verdict, "", by, note].map(cell).join(",");
    });
  }
  function say(words) { byId("told-status").textContent = words; }
  function tell() {
    var rows = toldRows();
    text.value = rows.join("\n");
    kept = rows.length === 0;
    say(rows.length === 0 ? "No horse is ticked yet."
      : rows.length + (rows.length === 1 ? " row" : " rows") + ", not yet copied or saved"
        + (byId("told-by").value.trim() === "" ? "; your name is missing." : "."));
  }
  function copied() {
    kept = true;
    say("Copied. Paste the rows at the end of registers/decisions.csv.");
  }
  function copy() {
    text.focus();
    text.select();
    if (document.execCommand && document.execCommand("copy")) { copied(); return; }
    if (navigator.clipboard) {
      navigator.clipboard.writeText(text.value).then(copied, function () {
        say("The rows are selected; copy them by hand.");
      });
    } else {
      say("The rows are selected; copy them by hand.");
    }
  }
  function save() {
    var rows = toldRows();
    var file = "date,about,kind,value,start_on,by,why\n"
      + rows.map(function (r) { return r + "\n"; }).join("");
    var link = document.createElement("a");
    link.href = "data:text/csv;charset=utf-8," + encodeURIComponent(file);
    link.download = "decisions-" + (list(".told")[0].dataset.date) + ".csv";
    document.body.appendChild(link);
    link.click();
    document.body.removeChild(link);
    kept = true;
    say("Saved as " + link.download + ". Add its rows to registers/decisions.csv.");
  }
  if (text) {
    list(".told input").forEach(function (input) {
      input.addEventListener("input", tell);
      input.addEventListener("change", tell);
    });
    byId("told-by").addEventListener("input", tell);
    byId("told-copy").addEventListener("click", copy);
    byId("told-save").addEventListener("click", save);
    window.addEventListener("beforeunload", function (event) {
      if (!kept) { event.preventDefault(); event.returnValue = ""; }
    });
    tell();
  }

  document.body.classList.add("with-script");
  list(".script-only").forEach(function (e) { e.hidden = false; });
  reveal();
})();
/*]]>*/
