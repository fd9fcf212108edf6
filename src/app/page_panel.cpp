// The real pages of a lesson, as they are printed, and their way out as files.
#include <fmt/format.h>

#include <algorithm>

#include "app/panels.h"
#include "publish/publish.h"

namespace app {
namespace {

constexpr double preview_dpi = 150;

void draw_page(Desk& desk) {
  PagePreview& preview = desk.preview;
  if (preview.texture && desk.textures.drop) desk.textures.drop(preview.texture);
  preview.texture = nullptr;
  if (!desk.type) {
    auto type = paint::Type::open();
    if (!type) {
      desk.message = type.error().what;
      return;
    }
    desk.type = std::move(*type);
  }
  const auto pages = picture::handout(*desk.course(), *desk.plan(), desk.lesson, desk.voice(), *desk.type, picture::page_size(desk.course()->choices.paper));
  preview.pages = static_cast<int>(pages.size());
  preview.page = std::clamp(preview.page, 0, std::max(0, preview.pages - 1));
  preview.lesson = desk.lesson;
  if (pages.empty()) return;
  const list::List& page = pages[static_cast<std::size_t>(preview.page)];
  preview.width = static_cast<float>(page.width);
  preview.height = static_cast<float>(page.height);
  const auto pixels = paint::raster(page, *desk.type, preview_dpi);
  if (!pixels) desk.message = pixels.error().what;
  else if (desk.textures.make) preview.texture = desk.textures.make(*pixels);
}

void write_pages(Desk& desk, std::optional<int> lesson) {
  publish::HandoutOrder order;
  order.into = desk.folder / (publish::file_stem(desk.course()->title) + "-pages");
  order.lesson = lesson;
  order.hand = desk.hand == say::Hand::left ? course::Hand::left : course::Hand::right;
  order.paper = desk.course()->choices.paper;
  const auto written = publish::handouts(*desk.course(), *desk.plan(), desk.phrases, order, {}, {});
  desk.message = written ? desk.say("desk.written", {{"n", static_cast<std::int64_t>(written->files.size())}, {"folder", order.into.string()}}) : written.error().what;
}

void turn_to(Desk& desk, int page) {
  if (page < 0 || page >= desk.preview.pages || page == desk.preview.page) return;
  desk.preview.page = page;
  draw_page(desk);
}

}  // namespace

void page_panel(Desk& desk, float width, float height) {
  ImGui::SetNextWindowPos({width / 2, height / 2}, ImGuiCond_Always, {0.5F, 0.5F});
  ImGui::SetNextWindowSize({std::min(width - 20, height * 0.85F), height - 20});
  ImGui::OpenPopup("pages");
  if (!ImGui::BeginPopupModal("pages", nullptr, ImGuiWindowFlags_NoDecoration | ImGuiWindowFlags_NoMove | ImGuiWindowFlags_NoSavedSettings)) return;
  if (ImGui::IsWindowAppearing()) {
    desk.preview.page = 0;
    draw_page(desk);
  }
  const float foot = 50 * desk.scale;
  const ImVec2 room{ImGui::GetContentRegionAvail().x, ImGui::GetContentRegionAvail().y - foot};
  const float fit = std::min(room.x / desk.preview.width, room.y / desk.preview.height);
  const ImVec2 size{desk.preview.width * fit, desk.preview.height * fit};
  ImGui::SetCursorPosX(ImGui::GetCursorPosX() + (room.x - size.x) / 2);
  if (desk.preview.texture) ImGui::Image(desk.preview.texture, size, {0, 0}, {1, 1}, {1, 1, 1, 1}, paint4(desk.theme.line));
  else ImGui::Dummy(size);
  if (ImGui::Button(desk.say("desk.page-before").c_str())) turn_to(desk, desk.preview.page - 1);
  ImGui::SameLine();
  ImGui::TextUnformatted(fmt::format("{} / {}", desk.preview.page + 1, desk.preview.pages).c_str());
  ImGui::SameLine();
  if (ImGui::Button(desk.say("desk.page-after").c_str())) turn_to(desk, desk.preview.page + 1);
  ImGui::SameLine();
  if (strong_button(desk, desk.say("desk.write-lesson"))) write_pages(desk, desk.lesson);
  ImGui::SameLine();
  if (ImGui::Button(desk.say("desk.write-all").c_str())) write_pages(desk, std::nullopt);
  ImGui::SameLine();
  if (ImGui::Button(desk.say("desk.close").c_str()) || ImGui::IsKeyPressed(ImGui::GetKeyIndex(ImGuiKey_Escape))) {
    desk.asking = Asking::nothing;
    ImGui::CloseCurrentPopup();
  }
  ImGui::SameLine();
  ImGui::TextUnformatted(desk.message.c_str());
  ImGui::EndPopup();
}

}  // namespace app
