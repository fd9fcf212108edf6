// The real pages of a lesson, as they are printed, and their way out as files.
#include <fmt/format.h>

#include <algorithm>
#include <chrono>
#include <utility>

#include "app/flow.h"
#include "app/panels.h"
#include "list/contrast.h"
#include "publish/publish.h"

namespace app {
namespace {

constexpr double preview_dpi = 150;

void draw_page(Desk& desk) {
  PagePreview& preview = desk.preview;
  preview.of = desk.session.seen();
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
  if (publish::cannot_be_cut(*desk.plan(), desk.plan()->lessons[static_cast<std::size_t>(desk.lesson - 1)])) {
    desk.message = desk.say("desk.cutting-not-printed");
    preview.pages = 0;
    preview.lesson = desk.lesson;
    return;
  }
  say::Voice voice = desk.page_voice();
  voice.hand = desk.print.hand == course::Hand::left ? say::Hand::left : say::Hand::right;
  const auto pages = picture::handout(*desk.course(), *desk.plan(), desk.lesson, voice, *desk.type, picture::page_size(desk.print.paper),
                                      desk.print.large ? picture::Print::large : picture::Print::normal);
  preview.pages = static_cast<int>(pages.size());
  preview.page = std::clamp(preview.page, 0, std::max(0, preview.pages - 1));
  preview.lesson = desk.lesson;
  if (pages.empty()) return;
  const list::List& page = pages[static_cast<std::size_t>(preview.page)];
  preview.width = static_cast<float>(page.width);
  preview.height = static_cast<float>(page.height);
  const auto pixels = paint::raster(desk.print.ink == publish::Ink::black ? list::in_grey(page) : page, *desk.type, preview_dpi);
  if (!pixels) desk.message = pixels.error().what;
  else if (desk.textures.make) preview.texture = desk.textures.make(*pixels);
}

/// Writes on a thread of its own, from a snapshot that nothing changes; the window goes on.
void write_pages(Desk& desk, std::optional<int> lesson) {
  publish::HandoutOrder order;
  order.into = desk.folder / (publish::file_stem(desk.course()->title) + "-pages");
  order.lesson = lesson;
  order.hand = desk.print.hand;
  order.paper = desk.print.paper;
  order.print = desk.print.large ? picture::Print::large : picture::Print::normal;
  order.ink = desk.print.ink;
  order.dpi = desk.print.dpi;
  order.forms = desk.print.forms;
  order.sheets = desk.print.sheets;
  order.packet = desk.print.packet;
  order.ground = desk.print.ground;
  order.stamp = publish::stamp_of(std::chrono::floor<std::chrono::seconds>(std::chrono::system_clock::now()));
  desk.message.clear();
  desk.writing = std::make_unique<Writing>();
  Writing& writing = *desk.writing;
  writing.into = order.into;
  writing.thread = std::jthread([&writing, order, seen = desk.session.seen(), &phrases = desk.phrases.get()](const std::stop_token& stop) {
    const auto written = publish::handouts(seen->course, seen->plan, publish::phrases_in(seen->course.choices.language), order, stop, [&writing](int done, int of) {
      writing.done = done;
      writing.of = of;
    });
    writing.good = written.has_value();
    writing.outcome = written ? phrases.say("desk.written", {{"n", static_cast<std::int64_t>(written->files.size())}, {"folder", order.into.string()}}) : written.error().what;
    if (written && !written->refused.empty()) {
      writing.outcome += ' ';
      writing.outcome += phrases.say("desk.cutting-not-printed");
    }
    writing.finished = true;
  });
}

void writing_line(Desk& desk) {
  Writing& writing = *desk.writing;
  if (!writing.finished) {
    const int done = writing.done, of = std::max(1, writing.of.load());
    ImGui::ProgressBar(static_cast<float>(done) / static_cast<float>(of), {ImGui::GetContentRegionAvail().x * 0.6F, 0});
    beside(desk.say("desk.cancel-writing"));
    if (ImGui::Button(desk.say("desk.cancel-writing").c_str())) writing.thread.request_stop();
    return;
  }
  ImGui::TextUnformatted(writing.outcome.c_str());
  if (!writing.good || !desk.show_folder) return;
  beside(desk.say("desk.show-folder"));
  if (ImGui::Button(desk.say("desk.show-folder").c_str())) desk.show_folder(writing.into);
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
    if (!std::exchange(desk.print.asked, true)) {
      desk.print.hand = desk.hand == say::Hand::left ? course::Hand::left : desk.course()->choices.hand;
      desk.print.paper = desk.course()->choices.paper;
    }
    desk.preview.page = 0;
    draw_page(desk);
  }
  const float end = ImGui::GetCursorPosY() + ImGui::GetContentRegionAvail().y;
  const ImVec2 room{ImGui::GetContentRegionAvail().x, ImGui::GetContentRegionAvail().y - std::max(desk.preview.foot, height_of(3, 0))};
  const float fit = std::min(room.x / desk.preview.width, room.y / desk.preview.height);
  const ImVec2 size{desk.preview.width * fit, desk.preview.height * fit};
  ImGui::SetCursorPosX(ImGui::GetCursorPosX() + (room.x - size.x) / 2);
  if (desk.preview.texture) ImGui::Image(desk.preview.texture, size, {0, 0}, {1, 1}, {1, 1, 1, 1}, paint4(desk.theme.line));
  else ImGui::Dummy(size);
  const float foot = ImGui::GetCursorPosY();
  if (ImGui::Button(desk.say("desk.page-before").c_str())) turn_to(desk, desk.preview.page - 1);
  ImGui::SameLine();
  ImGui::TextUnformatted(fmt::format("{} / {}", desk.preview.page + 1, desk.preview.pages).c_str());
  beside(desk.say("desk.page-after"));
  if (ImGui::Button(desk.say("desk.page-after").c_str())) turn_to(desk, desk.preview.page + 1);
  ImGui::SameLine();
  const bool busy = desk.writing && !desk.writing->finished;
  if (strong_button(desk, desk.say("desk.write-lesson")) && !busy) write_pages(desk, desk.lesson);
  beside(desk.say("desk.write-all"));
  if (ImGui::Button(desk.say("desk.write-all").c_str()) && !busy) write_pages(desk, std::nullopt);
  beside(desk.say("desk.close"));
  if (ImGui::Button(desk.say("desk.close").c_str()) || ImGui::IsKeyPressed(ImGui::GetKeyIndex(ImGuiKey_Escape))) {
    desk.asking = Asking::nothing;
    ImGui::CloseCurrentPopup();
  }
  if (desk.asking == Asking::pages) {
    const bool chosen = page_choices(desk);
    if (desk.plan() && (chosen || desk.preview.of != desk.session.seen())) draw_page(desk);
    if (desk.writing) writing_line(desk);
    else ImGui::TextUnformatted(desk.message.c_str());
  }
  desk.preview.foot = std::min(ImGui::GetCursorPosY() - foot, end / 2);
  ImGui::EndPopup();
}

}  // namespace app
