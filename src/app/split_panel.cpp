// The split of the course into lessons: how long they are, how fast the class stitches, which lessons stay as they are; split again with a
// look at what moves before it is taken.
#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "app/flow.h"
#include "app/panels.h"
#include "app/teach.h"
#include "app/typed_field.h"
#include "file/schema.h"
#include "plan/schedule.h"

namespace app {
namespace {

constexpr float field_width = 110;

std::string labelled(const Desk& desk, const char* key, const char* id) { return fmt::format("{}##{}", desk.say(key), id); }

void pace_field(Desk& desk) {
  const bool beginner = desk.course()->choices.habits.pace == course::Pace::beginner;
  const auto word = [&](bool first) { return desk.say(first ? "desk.pace.beginner" : "desk.pace.practised"); };
  ImGui::SetNextItemWidth(1.5F * field_width * desk.scale);
  if (!ImGui::BeginCombo(labelled(desk, "desk.pace", "pace").c_str(), word(beginner).c_str())) return;
  for (const bool first : {false, true})
    if (ImGui::Selectable(word(first).c_str(), first == beginner) && first != beginner)
      desk.apply(session::change_pace(first ? course::Pace::beginner : course::Pace::practised));
  ImGui::EndCombo();
}

/// What the course has work of, in the order of the file's own list.
std::vector<std::string> kinds_of(const Desk& desk) {
  std::vector<std::string> kinds;
  for (const std::string& name : file::speed_names()) {
    const auto is = [&](const course::Part& part) { return part.kind == name; };
    const auto stage = [&](const plan::PartRoute& route) { return name == (route.stage == course::Stage::bars ? "bars" : "fillings"); };
    const auto& parts = desk.course()->parts;
    const auto& routes = desk.plan()->routes;
    const auto& finishing = desk.plan()->finishing;
    const bool cut_out = name == "cut-out" && std::any_of(finishing.begin(), finishing.end(), [](const plan::Finishing& f) { return f.finish == plan::Finish::cut_out; });
    if (cut_out || std::any_of(parts.begin(), parts.end(), is) || std::any_of(routes.begin(), routes.end(), stage)) kinds.push_back(name);
  }
  return kinds;
}

void kind_speed(Desk& desk, const std::string& kind) {
  const auto& own = desk.course()->choices.habits.stitches_a_minute;
  const bool set = own.find(kind) != own.end();
  const double now = plan::speed(*desk.course(), kind);
  double speed = now;
  ImGui::SetNextItemWidth(field_width * desk.scale);
  if (speed_field(desk, fmt::format("{}{}###speed {}", say::kind_name(desk.phrases, kind), set ? " *" : "", kind).c_str(), speed)) desk.apply(session::change_speed(kind, speed));
  if (!set) return;
  const std::string assumed = fmt::format("{}##{}", desk.say("desk.speed.assumed"), kind);
  beside(assumed);
  if (ImGui::Button(assumed.c_str())) desk.apply(session::change_speed(kind, std::nullopt));
}

void habit_minutes(Desk& desk, const char* label, const char* key, double now, const char* edit) {
  int minutes = static_cast<int>(std::lround(now));
  ImGui::SetNextItemWidth(field_width * desk.scale);
  if (whole_field(desk, labelled(desk, label, key).c_str(), minutes, 5, 15)) desk.apply(session::change_habit(key, std::to_string(minutes), edit));
}

bool washes(const Desk& desk) {
  const auto& all = desk.plan()->finishing;
  return std::any_of(all.begin(), all.end(), [](const plan::Finishing& f) { return f.finish == plan::Finish::wash; });
}

void settings(Desk& desk) {
  const course::Course& course = *desk.course();
  if (course.lessons.empty()) {
    course_number(desk, "desk.split.lessons", "lessons", course.lessons_wanted.value_or(static_cast<int>(desk.plan()->lessons.size())),
                "change number of lessons");
    beside_width(3 * field_width * desk.scale);
  }
  course_number(desk, "desk.split.minutes", "minutes", course.minutes, "change minutes");
  beside_width(3 * field_width * desk.scale);
  course_number(desk, "desk.split.home", "home_minutes", course.home_minutes, "change home work");
  beside_width(3 * field_width * desk.scale);
  habit_minutes(desk, "desk.split.prepare", "prepare_minutes", course.choices.habits.prepare_minutes, "change minutes for the cloth");
  if (washes(desk)) {
    beside_width(3 * field_width * desk.scale);
    habit_minutes(desk, "desk.split.wash", "wash_minutes", course.choices.habits.wash_minutes, "change minutes for the wash");
  }
  pace_field(desk);
  quiet(desk, desk.say("desk.speeds"));
  bool first = true;
  for (const std::string& kind : kinds_of(desk)) {
    if (!first) beside_width(3.2F * field_width * desk.scale);
    first = false;
    kind_speed(desk, kind);
  }
}

std::string list_of(const std::vector<std::string>& work) {
  std::string all;
  for (const std::string& one : work) {
    if (!all.empty()) all += '\n';
    all += one;
  }
  return all;
}

/// A lesson that is locked keeps its work.
void lock_box(Desk& desk, int number) {
  if (number > static_cast<int>(desk.course()->lessons.size())) return;
  bool locked = desk.course()->lessons[static_cast<std::size_t>(number - 1)].locked;
  if (ImGui::Checkbox(fmt::format("##lock{}", number).c_str(), &locked)) desk.apply(session::lock_lesson(number - 1, locked));
}

void cell(const Desk& desk, const std::string& text, bool marked) {
  if (marked) ImGui::PushStyleColor(ImGuiCol_Text, paint(desk.theme.accent));
  wrapped(text);
  if (marked) ImGui::PopStyleColor();
}

/// Number, lock, what is in it now and, once it is split again, what would be; what differs in the accent.
void lessons_table(Desk& desk, const session::SplitPreview* found) {
  const auto& lessons = desk.plan()->lessons;
  const std::size_t n = found ? found->lessons.size() : lessons.size();
  if (!ImGui::BeginTable("##split", found ? 4 : 3, ImGuiTableFlags_BordersInnerH | ImGuiTableFlags_SizingStretchProp)) return;
  ImGui::TableSetupColumn(desk.say("desk.split.lesson").c_str(), ImGuiTableColumnFlags_WidthStretch, 0.5F);
  ImGui::TableSetupColumn(desk.say("desk.split.locked").c_str(), ImGuiTableColumnFlags_WidthStretch, 0.5F);
  ImGui::TableSetupColumn(desk.say("desk.split.now").c_str(), ImGuiTableColumnFlags_WidthStretch, 2);
  if (found) ImGui::TableSetupColumn(desk.say("desk.split.then").c_str(), ImGuiTableColumnFlags_WidthStretch, 2);
  ImGui::TableHeadersRow();
  for (std::size_t i = 0; i < n; ++i) {
    const int number = static_cast<int>(i) + 1;
    ImGui::TableNextColumn();
    ImGui::TextUnformatted(std::to_string(number).c_str());
    ImGui::TableNextColumn();
    lock_box(desk, number);
    ImGui::TableNextColumn();
    if (i < lessons.size())
      wrapped(fmt::format("{}\n{}", list_of(lessons[i].work),
                          desk.say("desk.minutes", {{"n", static_cast<std::int64_t>(lessons[i].minutes + 0.5)}})));
    if (!found) continue;
    ImGui::TableNextColumn();
    const session::SplitPreview::Row& row = found->lessons[i];
    if (!row.then.empty())
      cell(desk,
           fmt::format("{}\n{}", list_of(row.then), desk.say("desk.minutes", {{"n", static_cast<std::int64_t>(row.minutes_then + 0.5)}})),
           row.moves());
  }
  ImGui::EndTable();
}

/// On a thread of its own, of a snapshot that nothing changes.
void begin_split(Desk& desk) {
  desk.splitting = std::make_unique<Splitting>();
  Splitting& splitting = *desk.splitting;
  splitting.of = desk.session.seen();
  splitting.thread = std::jthread([&splitting](const std::stop_token& stop) {
    auto found = session::split_again(splitting.of->course, splitting.of->plan, stop);
    if (found)
      splitting.found = *std::move(found);
    else
      splitting.trouble = found.error().what;
    splitting.finished = true;
  });
}

/// What was found for the course as it is now.
const session::SplitPreview* found_now(const Desk& desk) {
  if (!desk.splitting || !desk.splitting->finished || desk.splitting->of != desk.session.seen()) return nullptr;
  return desk.splitting->found ? &*desk.splitting->found : nullptr;
}

void told(const Desk& desk, const session::SplitPreview& found) {
  const bool moves = std::any_of(found.lessons.begin(), found.lessons.end(), [](const auto& row) { return row.moves(); });
  if (!moves) quiet(desk, desk.say("desk.split.nothing-moves"));
  for (const check::Snag& snag : found.snags) {
    const say::SaidSnag said = say::snag(desk.voice(), snag);
    ImGui::PushStyleColor(ImGuiCol_Text, paint(desk.theme.accent));
    wrapped(words::capitalised(said.says) + " \xE2\x80\x93 " + said.does);
    ImGui::PopStyleColor();
  }
}

void buttons(Desk& desk, const session::SplitPreview* found) {
  const bool busy = desk.splitting && !desk.splitting->finished;
  if (found) {
    if (strong_button(desk, desk.say("desk.split.take"))) {
      desk.apply(session::take_split(*desk.course(), found->work));
      desk.splitting.reset();
    }
    beside(desk.say("desk.split.again"));
    if (ImGui::Button(desk.say("desk.split.again").c_str())) begin_split(desk);
  } else if (strong_button(desk, desk.say("desk.split.again")) && !busy) {
    begin_split(desk);
  }
  cancel_and_message(desk, "desk.close");
}

}  // namespace

void split_panel(Desk& desk, float width, float height) {
  if (!begin_tall_panel(desk, "split", "desk.split", {width, height}, 980)) return;
  if (desk.plan()) {
    settings(desk);
    const session::SplitPreview* found = found_now(desk);
    if (desk.splitting && !desk.splitting->finished) quiet(desk, desk.say("desk.planning"));
    if (found) told(desk, *found);
    const float foot = height_of(1, desk.message.empty() ? 0 : 2);
    ImGui::BeginChild("##lessons", {0, std::max(60 * desk.scale, ImGui::GetContentRegionAvail().y - foot)});
    lessons_table(desk, found);
    ImGui::EndChild();
    buttons(desk, found);
  }
  ImGui::EndPopup();
}

}  // namespace app
