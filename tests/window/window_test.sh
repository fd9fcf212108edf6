#!/usr/bin/env bash
# The real window: open the sample, look, edit, save under another name, quit, and compare the file; kill it in the middle of an edit, start again and
# take up what was not saved; pictures of six states at two scales and in both themes, for people to look at. A missing tool is a failure, never a skip.
#   window_test.sh PROGRAM ROOT PICTURES
set -uo pipefail
program=$1 root=$2 pictures=$3
for tool in Xvfb xdotool xrdb import identify; do
  command -v $tool >/dev/null || { echo "window: $tool is missing: bash third_party/setup.sh --tests" >&2; exit 1; }
done

work=$(mktemp -d)
rm -rf "$pictures"
mkdir -p "$pictures" "$work/state" "$work/course"
export XDG_STATE_HOME=$work/state XDG_CONFIG_HOME=$work/config HOME=$work LIBGL_ALWAYS_SOFTWARE=1 ASAN_OPTIONS=detect_leaks=0
server= desk= hold=0.2
trap 'for p in $desk $server; do kill -9 $p 2>/dev/null; done; rm -rf "$work"' EXIT

fail() {
  echo "window: $1" >&2
  [ -s "$work/said" ] && sed 's/^/window: the program said: /' "$work/said" >&2
  import -window root "$pictures/failed.png" 2>/dev/null
  exit 1
}
start_screen() {  # width height dots-an-inch; -noreset, or the resources are lost with their last client
  [ -n "$server" ] && { kill $server; wait $server 2>/dev/null; }
  Xvfb -displayfd 3 -screen 0 "$1x$2x24" -noreset -nolisten tcp 3>"$work/display" 2>/dev/null &
  server=$!
  for _ in $(seq 50); do [ -s "$work/display" ] && break; sleep 0.1; done
  [ -s "$work/display" ] || fail "no screen came up"
  export DISPLAY=:$(cat "$work/display")
  for _ in $(seq 50); do  # a screen that follows another at once may refuse for a moment
    echo "Xft.dpi: $3" | xrdb -merge - 2>/dev/null && return
    sleep 0.1
  done
  fail "the screen does not answer"
}
start_desk() {  # arguments...
  (cd "$work/course" && exec "$program" "$@") >"$work/said" 2>&1 &
  desk=$!
  window=
  for _ in $(seq 100); do
    window=$(xdotool search --onlyvisible --name '^Tellekant' 2>/dev/null | head -n 1)
    [ -n "$window" ] && break
    kill -0 $desk 2>/dev/null || fail "the program ended before its window was there"
    sleep 0.1
  done
  [ -n "$window" ] || fail "no window"
  xdotool windowfocus "$window" 2>/dev/null
  sleep 0.5
}
key() {  # keys...: pressed for a while, so that a frame sees them
  for k in "$@"; do
    case $k in
      ctrl+shift+*) xdotool keydown ctrl keydown shift; sleep 0.05; xdotool keydown "${k##*+}"; sleep $hold; xdotool keyup "${k##*+}" keyup shift keyup ctrl ;;
      ctrl+*) xdotool keydown ctrl; sleep 0.05; xdotool keydown "${k##*+}"; sleep $hold; xdotool keyup "${k##*+}" keyup ctrl ;;
      *) xdotool keydown "$k"; sleep $hold; xdotool keyup "$k" ;;
    esac
    sleep 0.1
  done
}
click() { xdotool mousemove "$1" "$2"; sleep 0.2; xdotool mousedown 1; sleep 0.15; xdotool mouseup 1; sleep 0.3; }
drag() {  # from x y to x y, in steps, so that frames see the way
  xdotool mousemove "$1" "$2"; sleep 0.25
  xdotool mousedown 1; sleep 0.2
  for i in 1 2 3 4; do xdotool mousemove $(($1 + ($3 - $1) * i / 4)) $(($2 + ($4 - $2) * i / 4)); sleep 0.1; done
  sleep 0.2
  xdotool mouseup 1; sleep 0.4
}
picture() {
  sleep 0.3
  import -window root "$pictures/$1.png" || fail "no picture of $1"
  [ "$(identify -format %k "$pictures/$1.png")" -gt 20 ] || fail "the picture of $1 is empty"
}
ended() {  # wanted exit code
  for _ in 1 2 3; do  # a busy machine may miss a key
    for _ in $(seq 30); do kill -0 $desk 2>/dev/null || break 2; sleep 0.1; done
    key Escape ctrl+q
  done
  kill -0 $desk 2>/dev/null && fail "the program does not end"
  wait $desk
  local code=$?
  desk=
  [ $code -eq "$1" ] || fail "the program ended with $code"
}
file_has() { grep -qF "$2" "$1" || fail "$1 lacks: $2"; }

# The lessons' row has a button at its right end that adds a lesson: an edit that needs no place on the cloth.
add_lesson() { click 1330 110; }

sample=$work/course/frost.course.toml
cp "$root/lessons/frost.course.toml" "$sample"

# 1. Open, look, edit, undo, redo, save under another name, quit.
start_screen 1440 900 96
start_desk "$sample"
picture light-1-first-lesson
key Next Next n n c
picture light-2-walk
add_lesson
key ctrl+z
cmp -s "$sample" "$root/lessons/frost.course.toml" || fail "the file was written without being asked"
key ctrl+y ctrl+shift+s
key ctrl+a
xdotool type --delay 60 "$work/course/other"
sleep 0.3
picture light-3-save-as
key Return
for _ in $(seq 30); do [ -s "$work/course/other.course.toml" ] && break; sleep 0.1; done
[ -s "$work/course/other.course.toml" ] || fail "save as wrote nothing"
cmp -s "$sample" "$root/lessons/frost.course.toml" || fail "save as changed the file it came from"
diff <(sed 's/[[:space:]]*$//' "$sample") <(sed 's/[[:space:]]*$//' "$work/course/other.course.toml") | grep '^[<>]' >"$work/difference"
grep -q '^<' "$work/difference" && fail "what was in the file is not all in the new one"
file_has "$work/difference" 'title = "A new lesson"'
key ctrl+q
ended 0

# A ring of blocks and a cable drawn by hand on an empty cloth, whose middle lies in the middle of the view. From as near as can be nine steps out make
# 11 pixels a thread.
drawn=$work/course/drawn.course.toml
printf 'format = 1\n\n[course]\ntitle = "Drawn"\nfirst_day = 2027-01-12\n\n[cloth]\ncount = 22\n\n[thread.heavy]\npearl = 5\n\n[thread.fine]\npearl = 8\n' >"$drawn"
start_desk "$drawn"
x=499 y=488 far=135
xdotool mousemove $x $y
sleep 0.3
key plus plus plus plus plus plus plus plus plus plus plus plus plus plus
key minus minus minus minus minus minus minus minus minus
key w
drag $x $y $((x + far)) $((y - far))
drag $((x + far)) $((y - far)) $((x + 2 * far)) $y
drag $((x + 2 * far)) $y $((x + far)) $((y + far))
drag $((x + far)) $((y + far)) $x $y
key Escape 2  # the second kind: cable
drag 150 700 $((150 + 2 * far)) 700
key Escape 3  # every other kind after it, by its key: satin stitch pulled as a box,
drag 60 300 105 265
key 4  # a star pulled out of its middle,
drag 250 330 330 330
key 5  # eyelets, one pulled and one clicked,
drag 200 540 230 540
click 300 540
key Escape 6  # lines,
drag 60 440 170 440
key Escape 7
drag 850 560 950 560
key Escape 8
drag 850 260 950 260
key Escape 9  # and an area to be cut, by a block of the ring that holds it
click 522 478
key Escape
picture light-7-drawn
key ctrl+s
for _ in $(seq 30); do grep -qF 'kind = "cable"' "$drawn" && break; sleep 0.1; done
file_has "$drawn" 'path = "NE 4, SE 3, SW 3, NW 2"'
file_has "$drawn" 'kind = "cable"'
for kind in satin star eyelet four-sided backstitch edge cutwork; do file_has "$drawn" "kind = \"$kind\""; done
grep -qE 'path = "E (22|24|26)"' "$drawn" || fail "the cable has another path: $(grep path "$drawn" | tail -n 1)"
key ctrl+q
ended 0

# The first entry of a lesson's work, pulled from the sheet onto another lesson and taken back. The sheet is turned to its end, where the work stands;
# its row is found by trying rows upwards until the file that is saved differs.
start_desk "$sample"
xdotool mousemove 1200 500
for _ in $(seq 40); do xdotool click 5; done
sleep 0.3
moved=
for y in 805 790 775 760 745 730; do
  drag 1050 $y 750 110
  key ctrl+s
  cmp -s "$sample" "$root/lessons/frost.course.toml" || { moved=$y; break; }
done
[ -n "$moved" ] || fail "no work was moved onto another lesson"
work_of() { python3 - "$1" <<'PYTHON'
import sys, tomllib
print([lesson.get("work", []) for lesson in tomllib.load(open(sys.argv[1], "rb"))["lesson"]])
PYTHON
}
was=$(work_of "$root/lessons/frost.course.toml") is=$(work_of "$sample")
python3 - "$was" "$is" <<'PYTHON' || fail "pulling work changed it otherwise: $was became $is"
import ast, sys
was, now = map(ast.literal_eval, sys.argv[1:])
assert was[0][1:] == now[0] and sorted(sum(was, [])) == sorted(sum(now, []))
PYTHON
picture light-8-work-moved
key ctrl+z ctrl+s
for _ in $(seq 30); do cmp -s "$sample" "$root/lessons/frost.course.toml" && break; sleep 0.1; done
cmp -s "$sample" "$root/lessons/frost.course.toml" || fail "undo did not bring the work back"
key ctrl+q
ended 0

# 2. Killed in the middle of an edit; the next start offers what was not saved, and takes it up.
start_desk "$sample"
add_lesson
for _ in $(seq 60); do [ -s "$work/course/.frost.course.toml.unsaved" ] && break; key b; done
[ -s "$work/course/.frost.course.toml.unsaved" ] || fail "nothing was kept within seconds of an edit"
kill -9 $desk
wait $desk 2>/dev/null
cmp -s "$sample" "$root/lessons/frost.course.toml" || fail "the kill harmed the file"
start_desk "$sample"
picture light-4-unsaved-work
take_up=$(identify -format '%w' "$pictures/light-4-unsaved-work.png")
[ "$take_up" = 1440 ] || fail "the screen is not 1440 wide"
for y in 465 485; do click 545 $y; done  # the first button of the question
key ctrl+s
for _ in $(seq 30); do grep -qF 'title = "A new lesson"' "$sample" && break; sleep 0.1; done
file_has "$sample" 'title = "A new lesson"'
[ ! -e "$work/course/.frost.course.toml.unsaved" ] || fail "what was saved is still kept as unsaved"
key F1
picture light-5-keys
key Escape ctrl+p
sleep 1
picture light-6-pages
key Escape d
picture dark-1-first-lesson
key Next n n c
picture dark-2-walk
key ctrl+shift+s
picture dark-3-save-as
key Escape F1
picture dark-4-keys
key Escape ctrl+p
sleep 1
picture dark-5-pages
key Escape
for _ in 1 2 3 4 5 6 7 8 9 10 11 12; do xdotool mousemove 450 500 click 5; done
picture dark-6-far
key d ctrl+q
ended 0

# 3. A screen of twice the dots, both themes.
start_screen 2880 1800 192
hold=0.4  # a frame takes long here
start_desk "$sample"
[ "$(xdotool getwindowgeometry "$window" | sed -n 's/.*Geometry: //p')" = 2880x1800 ] || fail "the window is not twice as large on a screen of 192 dots an inch"
for theme in light dark; do
  picture $theme-double-1-first-lesson
  key Next n c
  picture $theme-double-2-walk
  key ctrl+shift+s
  picture $theme-double-3-save-as
  key Escape F1
  picture $theme-double-4-keys
  key Escape ctrl+p
  sleep 0.7
  picture $theme-double-5-pages
  key Escape l
  picture $theme-double-6-left-hand
  key l d
done
key ctrl+q
ended 0
echo "window: fine; $(ls "$pictures" | wc -l) pictures in $pictures"
