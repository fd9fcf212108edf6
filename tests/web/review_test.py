"""Review pages in a real browser: every step's words and points against the plan, every button by mouse, keys and touch at 320, 768 and
1440 dots, no request, no script but its own, what WCAG 2.2 asks for. review_test.py PROGRAM ROOT FOLDER. A missing browser is a failure."""
import csv
import json
import os
import pathlib
import re
import shutil
import subprocess
import sys
import time

from selenium.webdriver.common.keys import Keys

from browser import Browser

program, root, folder = sys.argv[1], pathlib.Path(sys.argv[2]), pathlib.Path(sys.argv[3])
HEM = '''format = 1
[course]
title = "Hem"
minutes = 300
[cloth]
count = 22
[thread.edge]
pearl = 5
[[part]]
name = "hem"
kind = "edge"
thread = "edge"
start = [0, 0]
path = "E 40, S 12, E 12, S 40, W 52, N 52"
out = "left"
'''
WILD = '<script>alert("x")</script> & Tom, "quoted" {{review.play}}'
failures = []


def check(good, what):
    if not good:
        failures.append(what)
        print('web:', what, file=sys.stderr)


def make():
    """The sample's pages and plans, and those of the same course with a title full of markup."""
    shutil.rmtree(folder, ignore_errors=True)
    folder.mkdir(parents=True)
    sample = (root / 'lessons/frost.course.toml').read_text()
    wild = sample.replace('title = "Frost on the Pane"', f"title = '{WILD}'").replace('title = "The inner cable"', f"title = '{WILD}'")
    for name, text in (('frost', sample), ('wild', wild), ('hem', HEM)):
        course = folder / f'{name}.course.toml'
        course.write_text(text)
        subprocess.run([program, 'handouts', course, '--into', folder / name, '--as', 'web', '--quiet'], check=True)
    subprocess.run([program, 'handouts', folder / 'hem.course.toml', '--into', folder / 'hem', '--as', 'stills', '--quiet'], check=True)


def plans_of(name):
    return {hand: json.loads(subprocess.run([program, 'plan', folder / f'{name}.course.toml', '--hand', hand], check=True, capture_output=True).stdout)
            for hand in ('right', 'left')}


def walk_of(plan, lesson):
    """Needle points of a lesson as the plan has them: (hole, number in its section, hole before or None, first words)."""
    points = []
    worked = [(section, trail) for trail in plan['trails'] for section in trail['sections'] if section['lesson'] == lesson]
    for section, trail in worked:
        holes = trail['points'][2 * section['first']:2 * section['last'] + 2]
        words = [c['words'] for c in plan['count_ins'] if c['lesson'] == lesson and c['part'] == trail['part'] and c['pass'] == trail['pass']
                 and c['place'] == trail['place'] and c['stitch'] == section['first']]
        for i, hole in enumerate(holes):
            points.append((hole, i + 1, holes[i - 1] if i else None, words[0] if i == 0 else None))
    return points


def loops_of(plan, lesson):
    """The same of an edge: up on the ridge, then in turn down inside and up on the ridge; a new thread goes down and up in the next hole of
    the ridge, and the last point closes it. Of each stitch the plan has the ridge hole and the inner one."""
    trail = plan['trails'][0]
    ridge, inner = trail['points'][0::2], trail['points'][1::2]
    holes = [ridge[0]]
    for k in range(len(ridge)):
        holes += ([ridge[k], ridge[k]] if k in trail['ends'][1:] else []) + [inner[k], ridge[k]]
    holes.append(ridge[0])
    first = plan['count_ins'][0]['words']
    return [(hole, i + 1, holes[i - 1] if i else None, first if i == 0 else None) for i, hole in enumerate(holes)]


def moves_in(words):
    """Threads to the right and down, as the sentence says."""
    across = down = 0
    for number, way in re.findall(r'(\d+) threads? (?:straight )?(up|down|to the left|to the right)', words):
        across += {'to the left': -1, 'to the right': 1}.get(way, 0) * int(number)
        down += {'up': -1, 'down': 1}.get(way, 0) * int(number)
    return across, down


EVERY_STEP = '''
const slider = document.getElementById('slider'), said = [];
for (let step = 1; step <= Number(slider.max); ++step) {
  slider.value = step;
  slider.dispatchEvent(new Event('input'));
  const needle = document.getElementById('needle');
  said.push([Number(needle.getAttribute('cx')), Number(needle.getAttribute('cy')), needle.getAttribute('class'),
             document.getElementById('number').textContent, document.getElementById('words').textContent,
             (document.getElementById('done').innerHTML.match(/M/g) || []).length]);
}
return said;'''


def steps(browser, plans, page, lesson, walk=walk_of):
    for hand in ('right', 'left'):
        browser.click(browser.find(f'hand-{hand}'))
        expected, seen = walk(plans[hand], lesson), browser.run(EVERY_STEP)
        check(len(expected) == len(seen) > 0, f'{page.name}: {len(seen)} steps, the plan has {len(expected)}')
        sign = -1 if hand == 'left' else 1
        for i, ((hole, number, before, first), (x, y, way, label, words, done)) in enumerate(zip(expected, seen)):
            at = f'{page.name}, {hand} hand, step {i + 1}: {words}'
            check([x, y] == hole, f'{at}: the needle is at {x}, {y}, not {hole}')
            check(way == ('up' if number % 2 else 'down') and label == str(number), f'{at}: {way} {label}')
            if walk is walk_of:
                check(done == sum(1 for e in expected[:i + 1] if e[1] % 2 == 0), f'{at}: {done} stitches are drawn')
            if first is not None:
                check(words == first, f'{at}: the plan counts in with: {first}')
            else:
                check(words.find(f'{number}: ') >= 0 and re.search(r'\bup\b' if number % 2 else r'\bdown\b', words), at)
                check(moves_in(words) == (sign * (hole[0] - before[0]), hole[1] - before[1]), f'{at}: from {before} to {hole}')


def step(browser):
    return int(browser.find('slider').get_attribute('value'))


def buttons(browser, act, how):
    """Every button once, by one way of pressing."""
    press = lambda name: act(browser.find(name))
    value = lambda name, attribute='aria-pressed': browser.find(name).get_attribute(attribute)
    most = int(value('slider', 'max'))
    press('first')
    check(step(browser) == 1, f'{how}: first')
    press('next'), press('next')
    check(step(browser) == 3, f'{how}: next')
    press('before')
    check(step(browser) == 2, f'{how}: before')
    press('last')
    check(step(browser) == most, f'{how}: last')
    press('before'), press('show-back')
    check(value('show-back') == 'false' and value('back', 'd') == '', f'{how}: thread on the back off')
    press('show-back')
    check(value('show-back') == 'true' and value('back', 'd') != '', f'{how}: thread on the back on')
    width = lambda: browser.run('return document.getElementById("picture").viewBox.baseVal.width')
    was = width()
    press('nearer')
    near = width()
    check(near < was, f'{how}: nearer')
    press('farther')
    check(width() > near, f'{how}: farther')
    press('whole')
    check(width() >= was, f'{how}: whole')
    for hand in ('left', 'right'):
        press(f'hand-{hand}')
        shown = browser.run('return [...document.querySelectorAll("[data-for]")].filter(e => e.offsetParent).map(e => e.dataset.for)')
        check(shown and set(shown) == {hand} and value(f'hand-{hand}') == 'true', f'{how}: {hand} hand shows {shown}')
    dark = value('dark')
    press('dark')
    check(value('dark') != dark, f'{how}: dark')
    press('dark')
    for i, button in enumerate(browser.driver.find_elements('css selector', '[data-for="right"] [data-step]')):
        act(button)
        check(step(browser) == int(button.get_attribute('data-step')), f'{how}: show close-up {i}')
    browser.run('document.getElementById("pace").value = "600"')
    press('first'), press('play')
    check(value('play') == 'true', f'{how}: play')
    time.sleep(0.8)
    press('play')
    check(value('play') == 'false' and step(browser) == 2, f'{how}: after 0.8 seconds of quick play at {step(browser)}')


def ways(browser, page):
    for width, height in ((320, 640), (768, 1024), (1440, 900)):
        browser.size(width, height)
        browser.open(page)
        buttons(browser, browser.click, f'mouse at {width}')
        buttons(browser, lambda element: browser.keys(element, Keys.ENTER), f'keys at {width}')
        browser.keys(browser.find('slider'), Keys.HOME)
        browser.keys(browser.find('slider'), Keys.ARROW_RIGHT)
        check(step(browser) == 2 and browser.find('number').text == '2', f'slider by keys at {width}')
        check(browser.run('return document.documentElement.scrollWidth <= document.documentElement.clientWidth'), f'wider than {width}')
        small = browser.run('''return [...document.querySelectorAll('button, select, input, a:not(.skip)')].filter(e => e.offsetParent)
          .filter(e => { const r = e.getBoundingClientRect(); return r.width < 24 || r.height < 24; }).map(e => e.outerHTML.slice(0, 80))''')
        check(not small, f'smaller than 24 dots at {width}: {small}')
        browser.driver.save_screenshot(str(folder / f'{width}.png'))
    browser.size(320, 640, touch=True)
    browser.open(page)
    buttons(browser, browser.tap, 'touch at 320')
    browser.tap(browser.find('first'))
    x, y = browser.middle(browser.find('cloth'))
    browser.touch([(x + 60, y), (x, y), (x - 60, y)])
    check(step(browser) == 2, f'a swipe to the left is one step on: {step(browser)}')
    browser.size(1440, 900)


CONTRASTS = '''
const light = (colour) => { const c = colour.match(/[\\d.]+/g).map(Number).slice(0, 3).map(v => v / 255).map(v => v <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4);
  return 0.2126 * c[0] + 0.7152 * c[1] + 0.0722 * c[2]; };
const ground = (e) => { for (; e; e = e.parentElement) { const c = getComputedStyle(e).backgroundColor; if (!/, 0\\)$/.test(c)) return c; } return 'rgb(255, 255, 255)'; };
const worst = [];
for (const e of document.querySelectorAll('body *:not(script):not(style)')) {
  const own = [...e.childNodes].some(n => n.nodeType === 3 && n.textContent.trim());
  if (!own || !e.getClientRects().length || e.classList.contains('letter') || e.matches('title, option')) continue;
  const style = getComputedStyle(e), colour = e.namespaceURI.endsWith('svg') ? style.fill : style.color;
  const a = light(colour), b = light(ground(e)), ratio = (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
  if (ratio < 4.5) worst.push(e.tagName + ' ' + e.className + ' ' + colour + ' on ' + ground(e) + ' ' + ratio.toFixed(2));
}
return worst;'''


def accessible(browser, page):
    browser.open(page)
    for theme in ('light', 'dark'):
        browser.media(prefers_color_scheme=theme)
        browser.run('localStorage.clear()')
        browser.open(page)
        check(browser.run('return document.documentElement.dataset.theme') == theme, f'{theme} where the system is {theme}')
        worst = browser.run(CONTRASTS)
        check(not worst, f'contrast below 4.5 when {theme}: {worst[:5]}')
        browser.driver.save_screenshot(str(folder / f'{theme}.png'))
    nameless = [e.get_attribute('outerHTML')[:80] for e in browser.driver.find_elements('css selector', 'button, select, input, a, svg')
                if e.is_displayed() and not e.accessible_name]
    check(not nameless, f'without a name: {nameless}')
    check(browser.find('words').get_attribute('aria-live') == 'polite', 'words are not told')
    browser.driver.find_element('css selector', 'body').send_keys(Keys.TAB)
    check(browser.run('return document.activeElement.className') == 'skip', 'the first stop of the keys is not the way past the head')
    order = browser.run('''return [...document.querySelectorAll('a, button, select, input')].filter(e => e.offsetParent && e.tabIndex >= 0)
      .map(e => e.getBoundingClientRect()).map(r => [Math.round(r.y + scrollY), Math.round(r.x)])''')
    check(all(a[0] <= b[0] + 12 for a, b in zip(order, order[1:])), 'the keys go up the page')
    ids = browser.run('return [...document.querySelectorAll("[id]")].map(e => e.id)')
    check(len(ids) == len(set(ids)), 'an id stands twice')
    browser.media(prefers_reduced_motion='reduce')
    check(browser.run('return getComputedStyle(document.documentElement).scrollBehavior') == 'auto', 'the page glides against the wish for less motion')
    browser.media('print')
    check(browser.run('return [...document.querySelectorAll("button, input, select")].every(e => !e.getClientRects().length)'), 'buttons are printed')
    browser.media()


AXE = '''
const done = arguments[arguments.length - 1];
axe.run(document, {runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice']})
  .then(r => done((r.passes.length > 10 ? [] : ['nothing was looked at']).concat(r.violations.map(v => `${v.impact} ${v.id}: ${v.nodes.length} times, ${v.nodes[0].html
    .slice(0, 120)}`))), e => done([String(e)]));'''


def axe(browser, pages):
    """Deque's axe-core (npm, no Debian package), where AXE_CORE names its axe.min.js: it finds nothing."""
    script = os.environ.get('AXE_CORE')
    if not script:
        print('web: axe-core is not here (AXE_CORE names no axe.min.js): skipped')
        return
    source = pathlib.Path(script).read_text()
    for page in pages:
        for theme in ('light', 'dark'):
            browser.media(prefers_color_scheme=theme)
            browser.open(page)
            browser.run('localStorage.clear()')
            browser.open(page)
            browser.run(source)
            found = browser.driver.execute_async_script(AXE)
            check(not found, f'{page.name}, {theme}: {found}')
    browser.media()


def remembers(browser, page):
    browser.open(page)
    for _ in range(4):
        browser.click(browser.find('next'))
    at = step(browser)
    browser.open(page)
    check(step(browser) == at > 4, 'the step is not remembered')
    browser.open(page.parent / 'index.html')
    number = int(page.name[7:9])
    check(re.search(rf'\b{at}\b', browser.find(f'progress-{number}').text), 'the index does not say where she is')
    check(len(browser.driver.find_elements('css selector', '.lessons a')) == 5, 'the index has not five lessons')
    browser.click(browser.driver.find_elements('css selector', '.lessons a')[0])
    check(browser.find('slider') is not None, 'the index does not lead to a lesson')


def safe(browser):
    page = next((folder / 'wild').glob('lesson-03*.html'))
    browser.open(page)
    check(browser.driver.find_element('css selector', 'h1').text == WILD, 'the title is not what was written')
    check(browser.driver.title == f'{WILD} · {WILD}', f'the window is called {browser.driver.title}')
    check(len(browser.driver.find_elements('css selector', 'script')) == 2, 'there is a script too many')
    browser.run('''window.refused = []; document.addEventListener('securitypolicyviolation', e => window.refused.push(e.effectiveDirective));
      fetch('http://127.0.0.1:9/').catch(() => {}); new Image().src = 'http://127.0.0.1:9/x.png';
      const s = document.createElement('script'); s.textContent = 'window.broken = 1'; document.body.append(s);
      return 0;''')
    time.sleep(0.3)
    refused = browser.run('return window.refused')
    check({'connect-src', 'img-src', 'script-src-elem'} <= set(refused) and not browser.run('return window.broken'), f'the page forbids only {refused}')
    browser.command('Emulation.setScriptExecutionDisabled', value=True)
    browser.open(page)
    check(not browser.find('walk').is_displayed(), 'controls that cannot work are shown without a script')
    check(browser.driver.find_element('css selector', '[data-for="right"] svg').is_displayed(), 'without a script the close-ups are not shown')
    browser.command('Emulation.setScriptExecutionDisabled', value=False)


CUES = '''
const [text, kind, done] = arguments, video = document.createElement('video'), track = document.createElement('track');
track.kind = kind;
track.default = true;
track.src = URL.createObjectURL(new Blob([text], {type: 'text/vtt'}));
track.onload = () => done([...track.track.cues].map(c => [c.id, c.startTime, c.endTime, c.text]));
track.onerror = () => done([]);
video.append(track);
document.body.append(video);
track.track.mode = 'hidden';'''


def cues(browser):
    """Chromium reads the cue sheet: the same files, times and words as the CSV."""
    browser.driver.get('about:blank')
    stills = folder / 'hem/stills'
    sheet = next(stills.glob('*-cues.csv'))
    rows = list(csv.DictReader(sheet.open(newline='')))
    read = lambda path, kind: browser.driver.execute_async_script(CUES, path.read_text(), kind)
    seen, at = read(sheet.with_suffix('.vtt'), 'captions'), 0.0
    check(len(seen) == len(rows) > 10, f'the cue sheet has {len(seen)} cues, the CSV {len(rows)}')
    for row, (name, begins, ends, words) in zip(rows, seen):
        good = name == row['file'] and words == row['said'] and abs(begins - at) < 0.002 and abs(ends - begins - float(row['seconds'])) < 0.002
        check(good and (stills / '1080' / name).exists(), f'cue {name} {begins} {ends} {words}; the CSV has {row}')
        at = ends
    chapters = read(stills / sheet.name.replace('-cues.csv', '-chapters.vtt'), 'chapters')
    titles = list(dict.fromkeys(row['picture'] for row in rows))
    check([c[3] for c in chapters] == titles and abs(chapters[-1][2] - at) < 0.002, f'chapters {chapters}, close-ups {titles}')


def main():
    make()
    plans = plans_of('frost')
    pages = sorted((folder / 'frost').glob('lesson-*.html'))
    check(len(pages) == 5, f'{len(pages)} pages')
    for page in folder.glob('*/*.html'):
        check(page.stat().st_size < 300_000, f'{page.name} has {page.stat().st_size} bytes')
    browser = Browser()
    try:
        browser.size(1440, 900)
        for number, page in enumerate(pages, 1):
            browser.open(page)
            steps(browser, plans, page, number)
        hem = next((folder / 'hem').glob('lesson-*.html'))
        browser.open(hem)
        steps(browser, plans_of('hem'), hem, 1, loops_of)
        ways(browser, pages[3])
        accessible(browser, pages[3])
        remembers(browser, pages[2])
        asked = [address for address in browser.asked_for() if not address.startswith('file:') or not address.endswith('.html')]
        check(not asked, f'asked for {asked}')
        said = [entry['message'] for entry in browser.driver.get_log('browser')]
        check(not said, f'the browser says: {said}')
        safe(browser)
        cues(browser)
        axe(browser, [pages[3], hem, pages[0].parent / 'index.html'])
    finally:
        browser.quit()
    print(f'web: {len(failures)} failures; pictures in {folder}')
    sys.exit(1 if failures else 0)


main()
