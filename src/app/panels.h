// The window's panels. Each is one file and keeps no state; all of it is in the Desk.
#pragma once

#include "app/desk.h"

namespace app {

struct Area {
  float x = 0, y = 0, w = 0, h = 0;  ///< pixels
};

/// Where the cloth is seen in a window of this size.
Area cloth_area(const Desk& desk, float width, float height);

void top_bar(Desk& desk, Area area);
void lesson_row(Desk& desk, Area area);
void cloth_view(Desk& desk, Area area);
void needle_bar(Desk& desk, Area area);
float needle_height(const Desk& desk, float width);  ///< pixels that it needs
float tools_height(const Desk& desk, float width);
void sheet(Desk& desk, Area area);
/// The panels that lie over the rest: files, questions, keys, pages.
void overlays(Desk& desk, float width, float height);
/// What is done on the cloth with the mouse or the keys, by the tool that is chosen.
void draw_by_hand(Desk& desk, Area area, ImDrawList& draw);
void hold_by_hand(Desk& desk, Area area, ImDrawList& draw);
void finish_drawing(Desk& desk);
std::string thread_for(const Desk& desk);  ///< of the part that would be drawn next
void shorten_drawing(Desk& desk);  ///< takes the last leg, place or name back
void choose_kind(Desk& desk, std::string_view kind);  ///< draws this kind from now on
std::string how_to_draw(const Desk& desk);  ///< the kind that is chosen
char key_of_kind(int number);  ///< '1' to '9', '0' for the tenth; a blank beyond
/// The keys of the part that would be drawn next, its places but for the hole that it is held at.
std::optional<session::Shape> next_shape(const Desk& desk, cloth::Hole held);
/// The hole under the mouse, or the one that the arrow keys moved to; pressed and let go by the mouse's left button or by Enter.
cloth::Hole pointed_hole(Desk& desk, Area area);
void move_pointer(Desk& desk, Area area, cloth::Hole by);
bool pointer_pressed(const Desk& desk);
bool pointer_let_go(const Desk& desk);
/// What is picked: its keys to be typed, copied, deleted; while drawing, what the next part will be.
void part_panel(Desk& desk);
void repeat_fields(Desk& desk, int part);  ///< of its panel: turned, mirrored, about which middle
void counts_panel(const Desk& desk);  ///< the lesson's counts to be sure, within the sheet
/// Takes in a student's mistake that begins at the needle's stitch, within the sheet.
void mistake_panel(Desk& desk);
/// From the needle's stitch to the end of its stretch all stands this far off, in threads of the chart.
void take_in_mistake(Desk& desk, cloth::Hole off);
bool mistake_told(const Desk& desk);  ///< the needle still stands where the mistake was asked
/// The first wrong stitch is pressed on the cloth and pulled to where it was stitched.
void begin_marking(Desk& desk);
void mark_by_hand(Desk& desk, Area area, ImDrawList& draw);
void draw_mistake(const Desk& desk, Area area, ImDrawList& draw);  ///< as the wrong stitches stand, while it is told
/// Of a lesson that cuts: cautions and the look-over before; of others nothing.
void cutting_panel(const Desk& desk);
/// While the cutting is shown: in words the snip that comes next; the threads at a point of the window, cut or left, and what holds them.
std::string next_snip(const Desk& desk);
std::vector<picture::HeldThread> threads_under(const Desk& desk, Area area, ImVec2 at);
void show_held(const Desk& desk, Area area, ImDrawList& draw);  ///< of the threads under the mouse
/// "60 stitches", "80 snips", or both.
std::string lesson_size(const Desk& desk);
void tool_bar(Desk& desk, Area area);
int picked_part(const Desk& desk);  ///< its number in the course, or -1
void remove_picked(Desk& desk);
void copy_picked(Desk& desk);
void pick_next(Desk& desk);
/// Opens a file and remembers it; what was wrong is in the message.
void open_course(Desk& desk, const std::filesystem::path& file);
/// A paper chart laid under the grid from a picture file; what was wrong is in the message.
void lay_paper(Desk& desk, const std::filesystem::path& file);
void draw_paper(const Desk& desk, Area area, ImDrawList& draw);
/// True while the paper chart is being laid in place: then clicks are its own.
bool click_on_paper(Desk& desk, Area area);
void paper_panel(Desk& desk);
void start_panel(Desk& desk);
std::vector<Sample> samples(const std::vector<std::string_view>& courses);  ///< to begin with, each by its title
void file_panel(Desk& desk);
void page_panel(Desk& desk, float width, float height);
void split_panel(Desk& desk, float width, float height);
void buying_panel(Desk& desk, float width, float height);
void class_panel(Desk& desk, float width, float height);
/// How pages are to be written; true where the preview must be drawn anew.
bool page_choices(Desk& desk);
/// A panel over the rest, as high as the window and at most so wide; its title is a phrase. Where true, EndPopup() it.
bool begin_tall_panel(const Desk& desk, const char* name, const char* title, ImVec2 window, float most);
/// A whole number of [course], typed or by its buttons; `edit`: the name of the edit.
void course_number(Desk& desk, const char* label, const char* key, int now, const char* edit);
/// Beside a panel's own button: the one that closes it (or Esc), and below what could not be done.
void cancel_and_message(Desk& desk, const char* label = "desk.cancel");
/// A line to type into; true when Enter was pressed.
bool input_text(const char* id, std::string& text);
void input_lines(const char* id, std::string& text, int lines);  ///< Enter begins a new line
/// The interface larger or smaller, from 75 to 250 %.
void scale_by(Desk& desk, float times);
/// Undo and redo; what is being drawn by hand is let go of first.
void undo(Desk& desk);
void redo(Desk& desk);
/// Keys that work everywhere.
void shortcuts(Desk& desk);
/// Into its file; asks for one first where there is none, or where the file has changed meanwhile.
void save(Desk& desk);
/// Ctrl+S in the middle of a field: saves once what is typed there is taken over.
void save_what_was_typed(Desk& desk);

/// A window of our own without the toolkit's decorations; End() it.
void begin_area(const char* name, Area area, ImU32 ground, ImGuiWindowFlags more = 0);
void heading(const Desk& desk, const std::string& text);
void wrapped(const std::string& text);
void quiet(const Desk& desk, const std::string& text);  ///< wrapped, in the quiet colour
/// A button in the deep colour; for the one action that matters most.
bool strong_button(const Desk& desk, const std::string& label, ImVec2 size = {0, 0});

}  // namespace app
