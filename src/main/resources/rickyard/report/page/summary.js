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
    return ((head ? head : entry).textContent + " " + (entry.dataset.find || "")).toLowerCase();
  });
  function isLine(entry) { return entry.dataset.entry === "line"; }
  var whole = all.filter(function (entry) { return !isLine(entry); }).length;
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
        parts(d.not).concat(parts(d.open)).map(function (g) { return "Lots not cleared for " + g; }));
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
  function set(element, name, on) {
    if (on) { element.classList.add(name); } else { element.classList.remove(name); }
  }
  function entriesIn(element) {
    return (element.matches("[data-entry]") ? [element] : []).concat(list("[data-entry]", element));
  }
  function isShown(entry) { return !entry.classList.contains("away"); }

  /* A section without a hit is hidden, and one line at the head names those; so is a part. */
  var note = byId("search-note");
  var sections = list("main > section").map(function (section) {
    var heading = section.querySelector("h2");
    var groups = [];
    Array.prototype.slice.call(section.children).forEach(function (child) {
      if (child === heading) { return; }
      if (child.tagName === "H3" || groups.length === 0) {
        groups.push({ headed: child.tagName === "H3", parts: [] });
      }
      var own = entriesIn(child);
      groups[groups.length - 1].parts.push({
        element: child, entries: own, always: child.classList.contains("told-rows")
      });
    });
    return { element: section, name: heading.textContent, groups: groups };
  });
  function thin(quiet) {
    var hidden = [];
    sections.forEach(function (section) {
      var any = quiet;
      section.groups.forEach(function (group) {
        group.left = quiet || group.parts.some(function (p) { return p.entries.some(isShown); });
        any = any || group.left;
      });
      set(section.element, "left-out", !any);
      if (!any) { hidden.push(section.name); }
      section.groups.forEach(function (group) {
        group.parts.forEach(function (p) {
          var keep = any && (group.left || !group.headed || p.always);
          var empty = !quiet && p.entries.length > 0 && !p.entries.some(isShown);
          set(p.element, "left-out", !keep || empty);
        });
      });
    });
    note.textContent = hidden.length === 0 ? "" : "Hidden by the search: " + hidden.join("; ") + ".";
  }

  var hits = [];
  var at = -1;
  var target = null;
  var last = "\n";
  function filter() {
    var wanted = box.value.toLowerCase().split(/\s+/).filter(function (w) { return w !== ""; });
    var kind = only.value;
    var quiet = wanted.length === 0 && kind === "";
    var asked = wanted.join(" ") + "\n" + kind;
    if (asked === last) { return; }
    last = asked;
    var lines = [];
    hits = [];
    at = -1;
    all.forEach(function (entry, i) {
      var hit = wanted.every(function (w) { return texts[i].indexOf(w) !== -1; })
        && (kind === "" || kinds[i].indexOf(kind) !== -1);
      set(entry, "away", !hit);
      if (hit) { (isLine(entry) ? lines : hits).push(entry); }
    });
    thin(quiet);
    found.textContent = quiet ? "" : hits.length + " of " + whole + " entries"
      + (lines.length === 0 ? "" : lines.length === 1 ? ", 1 line in a list"
        : ", " + lines.length + " lines in lists")
      + (hits.length + lines.length === 0 ? ""
        : "; Enter goes to the " + (hits.length + lines.length === 1 ? "hit" : "next"));
    if (hits.length === 0) { hits = lines; }
    if (quiet) { hits = []; }
  }
  function inOrder(a, b) {
    return a.compareDocumentPosition(b) & Node.DOCUMENT_POSITION_FOLLOWING ? -1 : 1;
  }
  function next() {
    if (hits.length === 0) { return; }
    if (at === -1) { hits.sort(inOrder); }
    at = (at + 1) % hits.length;
    var hit = hits[at];
    var head = hit.tagName === "DETAILS" ? hit.querySelector("summary") : null;
    if (head && hits.length === 1) { hit.open = true; }
    target = head || hit;
    target.tabIndex = head ? 0 : -1;
    target.focus();
    target.scrollIntoView();
    found.textContent = "Hit " + (at + 1) + " of " + hits.length
      + (hits.length === 1 ? "" : "; Enter: the next" + (head ? ", space bar: opens it" : ""))
      + "; Escape ends the search";
  }
  function clear() {
    box.value = "";
    only.value = "";
    filter();
    box.focus();
  }
  box.addEventListener("input", filter);
  only.addEventListener("change", filter);
  document.addEventListener("keydown", function (event) {
    var on = event.target;
    if (on !== box && (target === null || on !== target)) { return; }
    if (event.key === "Escape" || event.keyCode === 27) {
      event.preventDefault();
      clear();
    } else if (event.key === "Enter" && (on === box || hits.length > 1)) {
      event.preventDefault();
      next();
    }
  });

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
    /* What stands in a line of its own stays among those lines. */
    ["article", "details", "li"].forEach(function (tag) {
      if (wanted[0] === "lot") {
        arrange(list(tag + "[data-entry=lot]"), wanted[1], wanted[1] === "stock");
      } else if (wanted[0] === "horse") {
        Object.keys(levels).forEach(function (level) {
          arrange(list(tag + "[data-entry=horse][data-level=" + level + "]"), wanted[1],
            wanted[1] === "chance");
        });
      }
    });
  });

  /* Tables: a heading sorts its column, again the other way round. */
  function sortable(table) {
    var body = table.tBodies[0];
    if (!body || body.rows.length < 4 || table.dataset.sortable) { return; }
    if (table.classList.contains("call-list")) { return; /* stands in the order of urgency */ }
    table.dataset.sortable = "yes";
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
  }
  /* What is shut gets its buttons when it is opened: a large office has thousands of tables. */
  list("table").forEach(function (table) {
    if (!table.closest("details:not([open])")) { sortable(table); }
  });
  document.addEventListener("toggle", function (event) {
    if (event.target.open) {
      list("table", event.target).forEach(function (table) {
        if (!table.closest("details:not([open])")) { sortable(table); }
      });
    }
  }, true);

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
    var goal = location.hash === "" ? null : byId(location.hash.slice(1));
    if (!goal || !goal.dataset.entry) { return; }
    for (var up = goal; up && up.classList; up = up.parentNode) {
      set(up, "away", false);
      set(up, "left-out", false);
    }
    if (goal.tagName === "DETAILS") { goal.open = true; }
    goal.scrollIntoView();
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
  /* Ticks and notes outlive a reload: kept in this browser, under this page's address alone. */
  var drawer = "rickyard " + location.pathname + " ";
  function keep(item) {
    var ticked = item.querySelector("input[type=checkbox]").checked;
    var note = item.querySelector(".note").value;
    try {
      if (ticked || note !== "") {
        localStorage.setItem(drawer + item.dataset.about + " " + item.dataset.verdict,
          (ticked ? "1" : "0") + note);
      } else {
        localStorage.removeItem(drawer + item.dataset.about + " " + item.dataset.verdict);
      }
    } catch (e) { /* a browser that keeps nothing keeps nothing */ }
  }
  function restore() {
    list(".told").forEach(function (item) {
      var was = null;
      try {
        was = localStorage.getItem(drawer + item.dataset.about + " " + item.dataset.verdict);
      } catch (e) { return; }
      if (was !== null) {
        item.querySelector("input[type=checkbox]").checked = was.charAt(0) === "1";
        item.querySelector(".note").value = was.slice(1);
      }
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
    list(".told").forEach(function (item) {
      list("input", item).forEach(function (input) {
        ["input", "change"].forEach(function (kind) {
          input.addEventListener(kind, function () { keep(item); tell(); });
        });
      });
    });
    restore();
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
