'use strict';
(() => {
  const data = JSON.parse(document.getElementById('data').textContent);
  const root = document.documentElement;
  const find = (id) => document.getElementById(id);
  const each = (selector, act) => document.querySelectorAll(selector).forEach(act);
  // A browser may refuse to remember: then nothing is remembered, and all else works.
  const kept = {
    get(name) { try { return localStorage.getItem('tellekant ' + name); } catch (refused) { return null; } },
    set(name, value) { try { localStorage.setItem('tellekant ' + name, String(value)); } catch (refused) { /* not remembered */ } },
  };
  const stepName = (lesson) => `${data.course} ${lesson} step`;
  const fill = (text, values) => text.replace(/\{(\w+)\}/g, (all, name) => (name in values ? values[name] : all));

  each('[data-script]', (part) => { part.hidden = false; });

  const showTheme = (dark) => {
    root.dataset.theme = dark ? 'dark' : 'light';
    find('dark').setAttribute('aria-pressed', String(dark));
  };
  const saved = kept.get('dark');
  showTheme(saved === null ? matchMedia('(prefers-color-scheme: dark)').matches : saved === 'true');
  find('dark').addEventListener('click', () => {
    const dark = root.dataset.theme !== 'dark';
    showTheme(dark);
    kept.set('dark', dark);
  });

  if (data.lessons) {
    for (const lesson of data.lessons) {
      const step = Number(kept.get(stepName(lesson.number)));
      const place = find(`progress-${lesson.number}`);
      if (place && step > 0 && lesson.points > 0) place.textContent = fill(data.say.progress, { n: Math.min(step, lesson.points), of: lesson.points });
    }
    return;
  }

  const walk = find('walk');
  let hand = root.dataset.hand;
  let showWalk = () => {};
  const showHand = () => {
    root.dataset.hand = hand;
    each('[data-for]', (part) => { part.hidden = part.dataset.for !== hand; });
    for (const side of ['right', 'left']) find(`hand-${side}`).setAttribute('aria-pressed', String(side === hand));
    showWalk();
  };
  for (const side of ['right', 'left']) find(`hand-${side}`).addEventListener('click', () => { hand = side; kept.set('hand', side); showHand(); });
  const savedHand = kept.get('hand');
  if (savedHand === 'right' || savedHand === 'left') hand = savedHand;

  if (walk) showWalk = needle();
  showHand();

  function needle() {
    const gap = 0.12, near = 30, backs = 12;
    const steps = [];
    data.sections.forEach((section, s) => {
      for (let i = 0; i < section.points.length / 2; ++i) steps.push([s, i]);
    });
    const at = (section, i) => [section.points[2 * i], section.points[2 * i + 1]];
    const [x, y, width, height] = data.box;
    const full = Math.max(width, height);
    let step = 1, zoom = Math.max(1, full / near), back = kept.get('back') !== 'false', timer = 0;

    const line = (section, k) => {
      const [ax, ay] = at(section, 2 * k), [bx, by] = at(section, 2 * k + 1);
      const long = Math.hypot(bx - ax, by - ay) || 1, dx = gap * (bx - ax) / long, dy = gap * (by - ay) / long;
      return `M${ax + dx} ${ay + dy}L${bx - dx} ${by - dy}`;
    };
    // A looped stitch is done when the needle is up on the ridge again; the thread then lies along the ridge to the next.
    const loop = (section, k) => {
      const [[ax, ay], [bx, by], [cx, cy]] = [2 * k, 2 * k + 1, 2 * k + 2].map((i) => at(section, i));
      const stitch = bx === cx && by === cy ? '' : `M${bx} ${by}L${cx} ${cy}`;
      return stitch + (ax === cx && ay === cy ? '' : `M${ax} ${ay}L${cx} ${cy}`);
    };
    const lines = data.sections.map((section) => section.looped
      ? Array.from({ length: (section.points.length / 2 - 1) >> 1 }, (none, k) => loop(section, k))
      : Array.from({ length: section.points.length / 4 }, (none, k) => line(section, k)));
    const done = (section, i) => (section.looped ? i >> 1 : (i + 1) >> 1);
    const paths = data.sections.map((section) => {
      const path = document.createElementNS('http://www.w3.org/2000/svg', 'path');
      path.setAttribute('stroke-width', section.width);
      find('done').append(path);
      return path;
    });
    const backLine = (section, k) => {
      if (k === 0 || section.looped || section.starts.includes(k)) return '';
      const way = [at(section, 2 * k - 1)];
      const via = section.via[k] || [];
      for (let i = 0; i < via.length; i += 2) way.push([via[i], via[i + 1]]);
      way.push(at(section, 2 * k));
      return way.map(([px, py], i) => `${i ? 'L' : 'M'}${px} ${py}`).join('');
    };

    const place = (px, py) => {
      const seen = full / zoom, side = hand === 'left' ? -1 : 1;
      const mid = (from, size, point) => (size <= seen ? from + size / 2 : Math.min(Math.max(point, from + seen / 2), from + size - seen / 2));
      const left = (side < 0 ? -x - width : x), cx = mid(left, width, side * px), cy = mid(y, height, py);
      find('picture').setAttribute('viewBox', `${cx - seen / 2} ${cy - seen / 2} ${seen} ${seen}`);
      find('mirror').setAttribute('transform', `scale(${side} 1)`);
      const size = Math.max(1.1, seen / 24), number = find('number');
      number.setAttribute('font-size', size);
      number.setAttribute('x', side * px + 0.55 * size);
      number.setAttribute('y', py - 0.55 * size);
      find('needle').setAttribute('r', Math.max(0.36, seen / 90));
    };

    const show = () => {
      const [s, i] = steps[step - 1], section = data.sections[s], [px, py] = at(section, i), up = i % 2 === 0;
      paths.forEach((path, n) => path.setAttribute('d', n < s ? lines[n].join('') : n > s ? '' : lines[n].slice(0, done(section, i)).join('')));
      const k = i >> 1;
      let dashes = '';
      if (back) for (let n = Math.max(0, k - backs); n <= k; ++n) dashes += backLine(section, n);
      find('back').setAttribute('d', dashes);
      const mark = find('needle');
      mark.setAttribute('cx', px);
      mark.setAttribute('cy', py);
      mark.setAttribute('class', up ? 'up' : 'down');
      find('number').textContent = String(i + 1);
      const words = fill(data.say[hand][section.words[hand][i]], { n: i + 1 });
      find('words').textContent = words;
      const count = fill(data.say.count, { n: step, of: steps.length, part: section.title });
      find('count').textContent = count;
      const slider = find('slider');
      slider.value = String(step);
      slider.setAttribute('aria-valuetext', `${count}. ${words}`);
      find('show-back').setAttribute('aria-pressed', String(back));
      place(px, py);
      kept.set(stepName(data.lesson), step);
    };

    const go = (to) => { step = Math.min(Math.max(1, to), steps.length); show(); };
    const rest = () => {
      clearInterval(timer);
      timer = 0;
      find('play').setAttribute('aria-pressed', 'false');
      find('play').textContent = data.say.play;
    };
    const run = () => {
      if (step === steps.length) go(1);
      clearInterval(timer);
      timer = setInterval(() => { go(step + 1); if (step === steps.length) rest(); }, Number(find('pace').value));
      find('play').setAttribute('aria-pressed', 'true');
      find('play').textContent = data.say.pause;
    };
    const press = (id, act) => find(id).addEventListener('click', act);
    press('play', () => (timer ? rest() : run()));
    press('first', () => { rest(); go(1); });
    press('before', () => { rest(); go(step - 1); });
    press('next', () => { rest(); go(step + 1); });
    press('last', () => { rest(); go(steps.length); });
    press('show-back', () => { back = !back; kept.set('back', back); show(); });
    press('nearer', () => { zoom = Math.min(full / 8, zoom * 1.6); show(); });
    press('farther', () => { zoom = Math.max(1, zoom / 1.6); show(); });
    press('whole', () => { zoom = 1; show(); });
    find('slider').addEventListener('input', () => { rest(); go(Number(find('slider').value)); });
    find('pace').addEventListener('change', () => { if (timer) run(); });
    each('[data-step]', (button) => {
      button.hidden = false;
      button.addEventListener('click', () => { rest(); go(Number(button.dataset.step)); walk.scrollIntoView(); find('slider').focus({ preventScroll: true }); });
    });
    // A swipe over the picture is a step; the buttons do the same.
    let from = null;
    find('cloth').addEventListener('pointerdown', (event) => { from = event.clientX; });
    find('cloth').addEventListener('pointerup', (event) => {
      if (from !== null && Math.abs(event.clientX - from) > 40) { rest(); go(step + (event.clientX < from ? 1 : -1)); }
      from = null;
    });
    step = Math.min(Math.max(1, Number(kept.get(stepName(data.lesson))) || 1), steps.length);
    return show;
  }
})();
