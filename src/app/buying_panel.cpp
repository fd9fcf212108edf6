// What to buy, and the days of the course: shown, and written beside the course as text, as a table and as a calendar.
#include <fmt/format.h>

#include <algorithm>
#include <chrono>

#include "app/flow.h"
#include "app/panels.h"
#include "base/whole_file.h"
#include "publish/publish.h"
#include "say/stage_pieces.h"
#include "say/supplies.h"

namespace app {
namespace {

/// Whole or not at all; where it went is said.
void write(Desk& desk, const std::string& ending, const base::Result<std::string>& text) {
  const std::filesystem::path file = desk.folder / (publish::file_stem(desk.course()->title) + ending);
  if (!text) {
    desk.message = text.error().what;
    return;
  }
  const auto written = base::write_whole(file, *text);
  desk.message = written ? desk.say("desk.written-file", {{"file", file.string()}}) : written.error().what;
}

void list(const Desk& desk) {
  const say::SuppliesTold told = say::supplies(desk.voice(), *desk.plan());
  const bool cost = std::any_of(told.rows.begin(), told.rows.end(), [](const say::SupplyRow& row) { return !row.cost.empty(); });
  quiet(desk, desk.say("supplies.for", {{"sets", told.sets}}));
  if (ImGui::BeginTable("##supplies", cost ? 4 : 3, ImGuiTableFlags_BordersInnerH | ImGuiTableFlags_SizingStretchProp)) {
    for (const char* head : {"what", "one", "all", "cost"})
      if (cost || std::string_view(head) != "cost") ImGui::TableSetupColumn(desk.say(std::string("supplies.head.") + head).c_str());
    ImGui::TableHeadersRow();
    for (const say::SupplyRow& row : told.rows)
      for (const std::string* text : {&row.what, &row.one, &row.all, &row.cost}) {
        if (text == &row.cost && !cost) continue;
        ImGui::TableNextColumn();
        wrapped(*text);
      }
    ImGui::EndTable();
  }
  for (const std::string& sum : told.sums) wrapped(sum);
  for (const std::string& note : told.notes) quiet(desk, note);
}

/// What she stitches beforehand.
void stage_pieces(const Desk& desk) {
  heading(desk, desk.say("stage.heading"));
  if (!ImGui::BeginTable("##stages", 5, ImGuiTableFlags_BordersInnerH | ImGuiTableFlags_SizingStretchProp)) return;
  for (const char* head : {"shown", "done", "own", "on", "thread"}) ImGui::TableSetupColumn(desk.say(std::string("stage.head.") + head).c_str());
  ImGui::TableHeadersRow();
  const auto pieces = say::stage_pieces(desk.voice(), *desk.plan());
  for (const say::StagePiece& piece : pieces)
    for (const std::string* text : {&piece.shown, &piece.done, &piece.own, &piece.on, &piece.thread}) {
      ImGui::TableNextColumn();
      wrapped(*text);
    }
  ImGui::EndTable();
  quiet(desk, desk.say("stage.cloth", {{"n", static_cast<std::int64_t>(pieces.size())}, {"size", say::cloth_size(desk.voice())}}));
}

void buttons(Desk& desk) {
  if (strong_button(desk, desk.say("desk.buying.text")))
    write(desk, "-shopping-list.txt", publish::supplies_text(desk.page_voice(), *desk.plan()));
  beside(desk.say("desk.buying.table"));
  if (ImGui::Button(desk.say("desk.buying.table").c_str()))
    write(desk, "-shopping-list.csv", publish::supplies_csv(desk.page_voice(), *desk.plan()));
  beside(desk.say("desk.buying.calendar"));
  if (ImGui::Button(desk.say("desk.buying.calendar").c_str())) {
    const std::string now = publish::stamp_of(std::chrono::floor<std::chrono::seconds>(std::chrono::system_clock::now()));
    write(desk, "-calendar.ics", publish::calendar(desk.page_voice(), *desk.plan(), now));
  }
  cancel_and_message(desk, "desk.close");
}

}  // namespace

void buying_panel(Desk& desk, float width, float height) {
  if (!begin_tall_panel(desk, "buying", "desk.buying", {width, height}, 860)) return;
  if (ImGui::IsWindowAppearing()) desk.message.clear();
  if (desk.plan()) {
    course_number(desk, "desk.buying.students", "students", desk.course()->students, "change students");
    beside_width(330 * desk.scale);
    course_number(desk, "desk.buying.spares", "spares", desk.course()->spares, "change spares");
    const float foot = height_of(2, desk.message.empty() ? 0 : 2);
    ImGui::BeginChild("##list", {0, std::max(60 * desk.scale, ImGui::GetContentRegionAvail().y - foot)});
    list(desk);
    stage_pieces(desk);
    ImGui::EndChild();
    buttons(desk);
  }
  ImGui::EndPopup();
}

}  // namespace app
