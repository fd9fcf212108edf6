// The lesson's sheet: what is worked, where it starts and how to be sure, the close-ups, thread, what to put right.
#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "app/panels.h"
#include "app/teach.h"
#include "paint/imgui/play.h"
#include "session/mends.h"

namespace app {
namespace {

const plan::LessonPlan& lesson_of(const Desk& desk) { return desk.plan()->lessons[static_cast<std::size_t>(desk.lesson - 1)]; }

/// The count-in's landmark as chosen, or one of the others that the teacher looks at.
guide::CountIn shown_count(const Desk& desk, const guide::CountIn& count_in) {
  guide::CountIn shown = count_in;
  const int n = static_cast<int>(count_in.others.size()) + 1;
  if (desk.alternative % n != 0) shown.count = count_in.others[static_cast<std::size_t>(desk.alternative % n - 1)];
  return shown;
}

std::string start_heading(const Desk& desk, const guide::CountIn& count_in, bool several) {
  const guide::PlacedTrail& trail = desk.plan()->trails[static_cast<std::size_t>(count_in.trail)];
  return say::start_heading(desk.voice(), trail, trail.sections[static_cast<std::size_t>(count_in.section)], several);
}

/// Every count that was weighed, with its costs; folded away until it is asked for.
void other_counts(const Desk& desk, const guide::CountIn& count_in) {
  if (count_in.others.empty()) return;
  const bool open = ImGui::TreeNode(fmt::format("{}##others{}.{}", desk.say("desk.other-counts"), count_in.trail, count_in.section).c_str());
  teach(desk, "desk.teach.other-counts");
  if (!open) return;
  wrapped(say::why(desk.voice(), count_in.count));
  if (count_in.proof) quiet(desk, say::why(desk.voice(), *count_in.proof));
  for (const guide::Count& other : count_in.others) quiet(desk, say::why(desk.voice(), other));
  ImGui::TreePop();
}

/// The lesson's starts in the order in which it is worked.
std::vector<guide::CountIn> starts(const Desk& desk) {
  std::vector<guide::CountIn> ordered;
  for (const auto& [trail, section] : lesson_of(desk).sections)
    for (const guide::CountIn& count_in : desk.plan()->count_ins)
      if (count_in.trail == trail && count_in.section == section) ordered.push_back(count_in);
  return ordered;
}

void fly_to(Desk& desk, const cloth::Box& window) {
  const float pixels = 22 * desk.scale;
  const ImVec2 screen = ImGui::GetIO().DisplaySize;
  const Area cloth = cloth_area(desk, screen.x, screen.y);
  desk.view.pixels = pixels;
  desk.view.whole = false;
  const double middle = (window.x0 + window.x1) / 2.0;
  desk.view.x = (desk.hand == say::Hand::left ? -middle : middle) - cloth.w / pixels / 2;
  desk.view.y = (window.y0 + window.y1) / 2.0 - cloth.h / pixels / 2;
}

/// The needle at the start's first stitch, and the cloth there.
void go_to_start(Desk& desk, const guide::CountIn& start) {
  show_cutting(desk, false);
  int step = 0;
  for (const auto& [trail, section] : lesson_of(desk).sections) {
    if (trail == start.trail && section == start.section) break;
    const guide::Section& before = desk.plan()->trails[static_cast<std::size_t>(trail)].sections[static_cast<std::size_t>(section)];
    step += before.last - before.first + 1;
  }
  desk.walk.step = step;
  fly_to(desk, {start.hole.x, start.hole.y, start.hole.x, start.hole.y});
}

/// A heading that leads somewhere: true when it is clicked, or Enter pressed on it.
bool leading_heading(const Desk& desk, const std::string& id, const std::string& text) {
  ImGui::Dummy({0, 4 * desk.scale});
  ImGui::PushFont(desk.fonts.bold);
  const float width = ImGui::GetContentRegionAvail().x;
  const ImVec2 at = ImGui::GetCursorScreenPos(), size = ImGui::CalcTextSize(text.c_str(), nullptr, false, width);
  const bool pressed = ImGui::InvisibleButton(id.c_str(), {width, size.y});
  ImDrawList& draw = *ImGui::GetWindowDrawList();
  if (ImGui::IsItemHovered() || ImGui::IsItemFocused())
    draw.AddRectFilled(ImGui::GetItemRectMin(), ImGui::GetItemRectMax(), paint(desk.theme.hover), 4 * desk.scale);
  draw.AddText(desk.fonts.bold, desk.fonts.bold->FontSize, at, paint(desk.theme.ink), text.c_str(), nullptr, width);
  ImGui::PopFont();
  return pressed;
}

void start(Desk& desk) {
  const std::vector<guide::CountIn> all = starts(desk);
  for (const guide::CountIn& count_in : all) {
    const std::string id = fmt::format("##start{}.{}", count_in.trail, count_in.section);
    if (leading_heading(desk, id, start_heading(desk, count_in, all.size() > 1))) go_to_start(desk, count_in);
    teach(desk, "desk.teach.start");
    const guide::CountIn shown = shown_count(desk, count_in);
    wrapped(say::count_in(desk.voice(), shown));
    teach(desk, "desk.teach.count-in");
    if (shown.proof) {
      quiet(desk, desk.say("desk.to-be-sure") + " " + say::proof(desk.voice(), *shown.proof));
      teach(desk, "desk.teach.proof");
    }
    quiet(desk, desk.say("desk.count-cost", {{"seconds", words::Decimal{shown.count.cost_s, 0}}}));
    for (const std::string& sentence : say::tell_tales(desk.voice(), *desk.plan(), count_in)) quiet(desk, sentence);
    teach(desk, "desk.teach.tell-tales");
    other_counts(desk, count_in);
    if (!count_in.others.empty() && ImGui::SmallButton(fmt::format("{}##{}.{}", desk.say("desk.another-landmark"), count_in.trail, count_in.section).c_str())) ++desk.alternative;
  }
}

std::string shows(guide::Shows what) {
  constexpr const char* keys[] = {"start", "corner", "step-back", "second-pass", "new-thread", "join", "end"};
  return keys[static_cast<int>(what)];
}

/// A small picture of the close-up's window, from the same list as the cloth.
void thumbnail(const Desk& desk, const guide::CloseUp& close_up, ImVec2 at, ImVec2 size) {
  const cloth::Box& box = close_up.window;
  const float pixels = std::min(size.x / static_cast<float>(box.width() + 2), size.y / static_cast<float>(box.height() + 2));
  const bool left = desk.hand == say::Hand::left;
  picture::ChartView view;
  view.width = size.x / pixels;
  view.height = size.y / pixels;
  view.x = (left ? -(box.x0 + box.x1) : box.x0 + box.x1) / 2.0 - view.width / 2;
  view.y = (box.y0 + box.y1) / 2.0 - view.height / 2;
  view.pixels = pixels;
  view.lesson = desk.lesson;
  view.later = false;
  view.mirror = left;
  ImDrawList& draw = *ImGui::GetWindowDrawList();
  draw.PushClipRect(at, {at.x + size.x, at.y + size.y}, true);
  paint::play(picture::chart(*desk.course(), *desk.plan(), *desk.index, view, desk.theme.chart), {at, pixels, desk.fonts.text, desk.fonts.bold}, draw);
  draw.PopClipRect();
  draw.AddRect(at, {at.x + size.x, at.y + size.y}, paint(desk.theme.line), 4 * desk.scale);
}

/// Close-ups as small pictures; a click flies to the place.
void close_ups(Desk& desk) {
  const auto& all = desk.plan()->close_ups;
  if (std::none_of(all.begin(), all.end(), [&](const guide::CloseUp& c) { return c.lesson == desk.lesson; })) return;
  heading(desk, desk.say("desk.close-ups"));
  const ImVec2 size{96 * desk.scale, 64 * desk.scale};
  for (const guide::CloseUp& close_up : all) {
    if (close_up.lesson != desk.lesson) continue;
    const ImVec2 at = ImGui::GetCursorScreenPos();
    if (ImGui::InvisibleButton(fmt::format("##close-up{}", close_up.letter).c_str(), {ImGui::GetContentRegionAvail().x, size.y})) fly_to(desk, close_up.window);
    if (!ImGui::IsItemVisible()) continue;
    teach(desk, "desk.teach.shows." + shows(close_up.shows));
    ImDrawList& draw = *ImGui::GetWindowDrawList();
    if (ImGui::IsItemHovered() || ImGui::IsItemFocused()) draw.AddRectFilled(ImGui::GetItemRectMin(), ImGui::GetItemRectMax(), paint(desk.theme.hover), 4 * desk.scale);
    if (desk.index) thumbnail(desk, close_up, at, size);
    const float x = at.x + size.x + 12 * desk.scale;
    draw.AddText(desk.fonts.text, desk.fonts.text->FontSize, {x, at.y + 8 * desk.scale}, paint(desk.theme.ink), fmt::format("{}  {}", close_up.letter, desk.say("desk.shows." + shows(close_up.shows))).c_str());
    if (close_up.stands_for.size() > 1)
      draw.AddText(desk.fonts.small, desk.fonts.small->FontSize, {x, at.y + 32 * desk.scale}, paint(desk.theme.quiet),
                   desk.say("desk.times", {{"n", static_cast<std::int64_t>(close_up.stands_for.size())}}).c_str());
  }
}

void missed(Desk& desk) {
  const auto said = say::missed(desk.voice(), *desk.plan(), lesson_of(desk));
  if (said.empty()) return;
  heading(desk, say::missed_heading(desk.voice(), lesson_of(desk)));
  for (const std::string& sentence : said) wrapped(sentence);
}

void thread(Desk& desk) {
  if (lesson_of(desk).thread_mm.empty()) return;
  heading(desk, desk.say("desk.thread"));
  for (const auto& [name, mm] : lesson_of(desk).thread_mm)
    wrapped(desk.say("desk.thread-line", {{"thread", name}, {"metres", words::Decimal{mm / 1000, 1}}, {"lengths", std::int64_t{lesson_of(desk).lengths.at(name)}}}));
  teach(desk, "desk.teach.lengths");
}

/// The lesson's work, each line to be sent to another lesson.
void work(Desk& desk) {
  heading(desk, desk.say("desk.work"));
  if (const double minutes = lesson_of(desk).prepare_minutes; minutes > 0)
    wrapped(desk.say("page.prepare-first", {{"n", static_cast<std::int64_t>(std::lround(minutes))}}));
  const auto& lessons = desk.course()->lessons;
  if (lessons.empty()) {
    for (const std::string& line : lesson_of(desk).work) wrapped(line);
    quiet(desk, desk.say("desk.laid-out"));
    return;
  }
  if (desk.lesson > static_cast<int>(lessons.size())) return;
  const auto& items = lessons[static_cast<std::size_t>(desk.lesson - 1)].work;
  for (std::size_t i = 0; i < items.size(); ++i) {
    ImGui::Selectable(fmt::format("{}##work{}", items[i].text, i).c_str());
    if (ImGui::IsItemHovered()) ImGui::SetTooltip("%s", desk.say("desk.work-hint").c_str());
    if (ImGui::BeginDragDropSource()) {
      const CarriedWork carried{desk.lesson - 1, static_cast<int>(i)};
      ImGui::SetDragDropPayload(carried_work, &carried, sizeof carried);
      ImGui::TextUnformatted(items[i].text.c_str());
      ImGui::EndDragDropSource();
      continue;
    }
    if (!ImGui::BeginPopupContextItem(nullptr, ImGuiPopupFlags_MouseButtonLeft)) continue;
    for (int n = 1; n <= static_cast<int>(lessons.size()); ++n)
      if (n != desk.lesson && ImGui::MenuItem(desk.say("desk.move-to-lesson", {{"n", std::int64_t{n}}}).c_str()))
        desk.apply(session::move_work(*desk.course(), desk.lesson - 1, static_cast<int>(i), n - 1));
    ImGui::EndPopup();
  }
}

void put_right(Desk& desk) {
  bool any = false;
  int n = 0;
  for (const check::Snag& snag : desk.session.seen()->snags) {
    if (snag.lesson != 0 && snag.lesson != desk.lesson) continue;
    if (!any) heading(desk, desk.say("desk.put-right"));
    any = true;
    const say::SaidSnag said = say::snag(desk.voice(), snag);
    ImGui::PushStyleColor(ImGuiCol_Text, paint(snag.severity == check::Severity::stop ? desk.theme.accent : desk.theme.ink));
    wrapped(words::capitalised(said.says));
    ImGui::PopStyleColor();
    if (snag.at && ImGui::IsItemClicked()) fly_to(desk, {snag.at->x, snag.at->y, snag.at->x, snag.at->y});
    quiet(desk, words::capitalised(said.does));
    if (const auto edit = session::mend(*desk.course(), snag)) {
      const std::string label = fmt::format("{}##mend{}", desk.say("desk.mend", {{"what", desk.edit_words(edit->name)}}), n);
      if (ImGui::SmallButton(label.c_str())) return desk.apply(*edit);
    }
    ++n;
  }
}

void faults(const Desk& desk) {
  heading(desk, desk.say("desk.faults"));
  for (const base::Fault& fault : desk.session.faults())
    wrapped(fmt::format("{}:{}  {}{}{}", fault.place.line, fault.place.column, fault.found, fault.expected.empty() ? "" : " · ", fault.expected));
}

}  // namespace

void sheet(Desk& desk, Area area) {
  begin_area("sheet", area, paint(desk.theme.panel));
  const float foot = 50 * desk.scale;
  ImGui::BeginChild("sheet text", {0, -foot}, false, ImGuiWindowFlags_None);
  if (!desk.message.empty()) {
    heading(desk, desk.say("desk.message"));
    wrapped(desk.message);
  }
  paper_panel(desk);
  part_panel(desk);
  if (!desk.session.faults().empty()) faults(desk);
  if (desk.course() && desk.course()->parts.empty() && desk.tool != Tool::draw) {
    heading(desk, desk.say("desk.nothing-drawn"));
    wrapped(desk.say("desk.nothing-drawn.do"));
  }
  if (desk.plan() && !desk.plan()->lessons.empty()) {
    ImGui::PushFont(desk.fonts.title);
    wrapped(say::lesson_title(desk.voice(), *desk.plan(), desk.lesson));
    ImGui::PopFont();
    quiet(desk, lesson_size(desk));
    put_right(desk);
    cutting_panel(desk);
    start(desk);
    close_ups(desk);
    counts_panel(desk);
    mistake_panel(desk);
    thread(desk);
    work(desk);
    missed(desk);
  }
  ImGui::EndChild();
  if (desk.plan() && !desk.plan()->lessons.empty() && strong_button(desk, desk.say("desk.pages"), {-1, 0})) desk.asking = Asking::pages;
  ImGui::End();
}

}  // namespace app
