// The marks of bars and fillings, drawn alike in pictures and in the key. `unit`: mm a thread.
#pragma once

#include "list/measure.h"
#include "picture/marks.h"

namespace picture {

/// The thread that is being worked, in front of everything: what lies under it is parted from it by a white rim.
void draw_worked(list::List& list, const std::vector<Point>& points, double unit);
/// The same where it runs behind threads.
void draw_hidden(list::List& list, const std::vector<Point>& points, double unit);
/// A numbered point of the needle: up is a filled disc, down an open one.
void draw_point(list::List& list, Point at, int number, list::TypeStyle style, const list::Measure& measure);
/// One thread of the cloth that is left in a bar.
void draw_cloth_thread(list::List& list, Point a, Point b, double unit);
/// Woven or wrapped already: a stroke across.
void draw_done(list::List& list, Point a, Point b, double unit);
void draw_arrow(list::List& list, Point tip, Point way, double size);
/// Half a disc on the edge of the bar, towards `out`.
void draw_picot(list::List& list, Point edge, Point out, double radius);
void draw_thread_begins(list::List& list, Point at);

void draw_bar_mark_sign(list::List& list, Mark mark, const Rect& room, double unit, list::TypeStyle style, const list::Measure& measure);

}  // namespace picture
