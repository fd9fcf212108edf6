// The class: how many, and as far as the teacher writes it down, names and the hand that holds the needle. Everything typed here is kept in the
// course file and nowhere else.
#include <fmt/format.h>

#include <algorithm>

#include "app/flow.h"
#include "app/panels.h"
#include "app/typed_field.h"
#include "say/supplies.h"

namespace app {
namespace {

void name_field(Desk& desk, int number, const course::Student& student) {
  std::string name = student.name;
  ImGui::SetNextItemWidth(-1);
  if (text_field(desk, "##name", name, desk.say("desk.class.no-name"))) desk.apply(session::change_student(number, name, student.hand));
}

void hand_field(Desk& desk, int number, const course::Student& student) {
  for (const course::Hand hand : {course::Hand::right, course::Hand::left}) {
    if (hand == course::Hand::left) ImGui::SameLine();
    const char* key = hand == course::Hand::left ? "desk.class.left" : "desk.class.right";
    if (ImGui::RadioButton(desk.say(key).c_str(), student.hand == hand) && student.hand != hand)
      desk.apply(session::change_student(number, student.name, hand));
  }
}

void list(Desk& desk) {
  const auto& listed = desk.course()->class_list;
  if (listed.empty() || !ImGui::BeginTable("##class", 4, ImGuiTableFlags_BordersInnerH)) return;
  const float s = desk.scale;
  ImGui::TableSetupColumn("n", ImGuiTableColumnFlags_WidthFixed, 30 * s);
  ImGui::TableSetupColumn("name", ImGuiTableColumnFlags_WidthStretch);
  ImGui::TableSetupColumn("hand", ImGuiTableColumnFlags_WidthFixed);
  ImGui::TableSetupColumn("remove", ImGuiTableColumnFlags_WidthFixed);
  const session::Seen still = desk.session.seen();  // an edit may put another course in its place
  for (int n = 0; n < static_cast<int>(still->course.class_list.size()); ++n) {
    const course::Student& student = still->course.class_list[static_cast<std::size_t>(n)];
    ImGui::PushID(n);
    ImGui::TableNextColumn();
    ImGui::AlignTextToFramePadding();
    ImGui::TextUnformatted(std::to_string(n + 1).c_str());
    ImGui::TableNextColumn();
    name_field(desk, n, student);
    ImGui::TableNextColumn();
    hand_field(desk, n, student);
    ImGui::TableNextColumn();
    if (ImGui::Button(desk.say("desk.class.remove").c_str())) desk.apply(session::remove_student(n));
    ImGui::PopID();
  }
  ImGui::EndTable();
}

}  // namespace

void class_panel(Desk& desk, float width, float height) {
  if (!begin_tall_panel(desk, "class", "desk.class", {width, height}, 720)) return;
  if (ImGui::IsWindowAppearing()) desk.message.clear();
  if (desk.course()) {
    quiet(desk, desk.say("desk.class.how"));
    course_number(desk, "desk.buying.students", "students", desk.course()->students, "change students");
    const float foot = height_of(1, desk.message.empty() ? 2 : 4);
    ImGui::BeginChild("##list", {0, std::max(60 * desk.scale, ImGui::GetContentRegionAvail().y - foot)});
    list(desk);
    ImGui::EndChild();
    wrapped(say::copies(desk.voice()));
    if (strong_button(desk, desk.say("desk.class.add"))) desk.apply(session::add_student());
    cancel_and_message(desk, "desk.close");
  }
  ImGui::EndPopup();
}

}  // namespace app
