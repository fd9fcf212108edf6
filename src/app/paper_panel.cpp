// The paper chart in the window: choosing it, two clicks on it and the two holes they are, seen under the grid or not.
#include <fmt/format.h>

#include "app/sight.h"

namespace app {
namespace {

PicturePoint point_under(const Desk& desk, Area area, ImVec2 mouse) {
  const Laid& at = desk.paper.at;
  const double x = desk.view.x + (mouse.x - area.x) / desk.view.pixels, y = desk.view.y + (mouse.y - area.y) / desk.view.pixels;
  return {((mirrored(desk) ? -x : x) - at.x) / at.across, (y - at.y) / at.down};
}

ImVec2 pixel_of_point(const Desk& desk, Area area, PicturePoint point) {
  const Laid& at = desk.paper.at;
  const double x = at.x + point.x * at.across, y = at.y + point.y * at.down;
  return {area.x + static_cast<float>(((mirrored(desk) ? -x : x) - desk.view.x) * desk.view.pixels), area.y + static_cast<float>((y - desk.view.y) * desk.view.pixels)};
}

}  // namespace

void lay_paper(Desk& desk, const std::filesystem::path& file) {
  auto pixels = read_picture(file);
  desk.message.clear();
  if (!pixels) return desk.report(tl::make_unexpected(pixels.error()));
  PaperChart& paper = desk.paper;
  if (paper.texture && desk.textures.drop) desk.textures.drop(paper.texture);
  paper = {};
  paper.there = true;
  paper.width = pixels->width;
  paper.height = pixels->height;
  if (desk.textures.make) paper.texture = desk.textures.make(*pixels);
  constexpr double first_width = 100;  // threads, until it is laid in place
  paper.at = {desk.view.x, desk.view.y, first_width / pixels->width, first_width / pixels->width};
}

void draw_paper(const Desk& desk, Area area, ImDrawList& draw) {
  const PaperChart& paper = desk.paper;
  if (!paper.there || !paper.shown) return;
  const ImVec2 a = pixel_of_point(desk, area, {0, 0}), b = pixel_of_point(desk, area, {static_cast<double>(paper.width), static_cast<double>(paper.height)});
  if (paper.texture) draw.AddImage(paper.texture, a, b, {0, 0}, {1, 1}, IM_COL32(255, 255, 255, static_cast<int>(255 * paper.strength)));
  for (int i = 0; i < paper.clicked; ++i) {
    const ImVec2 at = pixel_of_point(desk, area, paper.points[static_cast<std::size_t>(i)]);
    draw.AddCircle(at, 8 * desk.scale, paint(desk.theme.accent), 0, 2 * desk.scale);
    draw.AddText(desk.fonts.bold, desk.fonts.bold->FontSize, {at.x + 10 * desk.scale, at.y - 20 * desk.scale}, paint(desk.theme.accent), i == 0 ? "1" : "2");
  }
}

bool click_on_paper(Desk& desk, Area area) {
  PaperChart& paper = desk.paper;
  if (!paper.placing) return false;
  if (ImGui::IsItemHovered() && ImGui::IsMouseClicked(ImGuiMouseButton_Left) && paper.clicked < 2)
    paper.points[static_cast<std::size_t>(paper.clicked++)] = point_under(desk, area, ImGui::GetIO().MousePos);
  return true;
}

void paper_panel(Desk& desk) {
  PaperChart& paper = desk.paper;
  if (!paper.there) return;
  ImGui::PushFont(desk.fonts.bold);
  ImGui::TextUnformatted(desk.say("desk.paper-chart").c_str());
  ImGui::PopFont();
  ImGui::Checkbox(desk.say("desk.paper-shown").c_str(), &paper.shown);
  ImGui::PushItemWidth(ImGui::GetContentRegionAvail().x * 0.5F);
  ImGui::SliderFloat(desk.say("desk.paper-strength").c_str(), &paper.strength, 0.1F, 1, "%.1f");
  if (!paper.placing) {
    if (ImGui::Button(desk.say("desk.paper-place").c_str())) paper.placing = true, paper.clicked = 0;
    ImGui::SameLine();
    if (ImGui::Button(desk.say("desk.paper-away").c_str())) {
      if (paper.texture && desk.textures.drop) desk.textures.drop(paper.texture);
      paper = {};
    }
  } else {
    ImGui::PushTextWrapPos(0);
    ImGui::TextUnformatted(desk.say("desk.paper-clicks", {{"n", std::int64_t{paper.clicked}}}).c_str());
    ImGui::PopTextWrapPos();
    for (int i = 0; i < paper.clicked; ++i) {
      int xy[2] = {paper.holes[static_cast<std::size_t>(i)].x, paper.holes[static_cast<std::size_t>(i)].y};
      if (ImGui::InputInt2(fmt::format("{}##point{}", desk.say("desk.paper-hole", {{"n", std::int64_t{i + 1}}}), i).c_str(), xy))
        paper.holes[static_cast<std::size_t>(i)] = {xy[0], xy[1]};
    }
    if (paper.clicked == 2 && strong_button(desk, desk.say("desk.paper-lay"))) {
      if (const auto at = laid(paper.points, paper.holes)) paper.at = *at, paper.placing = false, paper.clicked = 0, desk.message.clear();
      else desk.message = desk.say("desk.paper-wrong");
    }
    if (paper.clicked == 2) ImGui::SameLine();
    if (ImGui::Button(desk.say("desk.cancel").c_str())) paper.placing = false, paper.clicked = 0;
  }
  ImGui::PopItemWidth();
  ImGui::Separator();
}

}  // namespace app
