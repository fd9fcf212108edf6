// The lesson's counts to be sure, as on its pages.
#include <fmt/format.h>

#include "app/panels.h"
#include "picture/table.h"

namespace app {
namespace {

void table_of(const Desk& desk, const picture::Table& table, int id) {
  ImGui::PushFont(desk.fonts.bold);
  ImGui::TextUnformatted(table.title.c_str());
  ImGui::PopFont();
  const int columns = static_cast<int>(table.heads.size()) + 1;
  if (!ImGui::BeginTable(fmt::format("counts{}", id).c_str(), columns, ImGuiTableFlags_SizingStretchProp)) return;
  ImGui::TableNextColumn();
  for (const std::string& head : table.heads) {
    ImGui::TableNextColumn();
    ImGui::TextDisabled("%s", head.c_str());
  }
  for (const picture::Table::Row& row : table.rows) {
    ImGui::TableNextColumn();
    ImGui::PushTextWrapPos(0);
    ImGui::TextUnformatted(row.label.c_str());
    ImGui::PopTextWrapPos();
    for (int c = 1; c < columns; ++c) {
      ImGui::TableNextColumn();
      if (c <= static_cast<int>(row.numbers.size())) ImGui::TextUnformatted(std::to_string(row.numbers[static_cast<std::size_t>(c - 1)]).c_str());
    }
  }
  ImGui::EndTable();
  if (table.note.empty()) return;
  ImGui::PushTextWrapPos(0);
  ImGui::TextDisabled("%s", table.note.c_str());
  ImGui::PopTextWrapPos();
}

}  // namespace

void counts_panel(const Desk& desk) {
  int id = 0;
  for (const picture::Table& table : picture::lesson_counts(*desk.course(), *desk.plan(), desk.lesson, desk.voice())) table_of(desk, table, id++);
}

}  // namespace app
