// Fields are taken over when they are left, by Enter, Tab or a click elsewhere; Esc puts back what stood there.
#include "app/typed_field.h"

#include "windowless.h"

namespace {

/// A name, a number and a hole under one another in a window of their own.
struct Form {
  Windowless w{TELLEKANT_ROOT "/lessons/frost.course.toml"};
  std::string name = "ring";
  int number = 3;
  std::array<int, 2> hole{1, 2};
  int taken = 0;
  ImVec2 at[3];

  void frames(int n) {
    for (int i = 0; i < n; ++i) {
      ImGui::NewFrame();
      ImGui::SetNextWindowPos({0, 0});
      ImGui::SetNextWindowSize({400, 300});
      ImGui::Begin("form", nullptr, ImGuiWindowFlags_NoDecoration);
      const auto placed = [&](int which, bool left) {
        at[which] = {ImGui::GetItemRectMin().x + 10, ImGui::GetItemRectMin().y + 10};
        taken += left;
      };
      placed(0, app::text_field(*w.desk, "name", name));
      placed(1, app::whole_field(*w.desk, "number", number, 1, 10));
      placed(2, app::hole_field(*w.desk, "hole", hole));
      ImGui::End();
      ImGui::Render();
    }
  }
  void click(ImVec2 point) {
    ImGuiIO& io = ImGui::GetIO();
    io.MousePos = point;
    frames(2);
    io.MouseDown[0] = true;
    frames(1);
    io.MouseDown[0] = false;
    frames(2);
  }
  void press(ImGuiKey key) {
    ImGui::GetIO().KeysDown[400 + key] = true;
    frames(1);
    ImGui::GetIO().KeysDown[400 + key] = false;
    frames(2);
  }
  /// In place of all that stands in the field.
  void type(const char* text) {
    ImGui::GetIO().KeyCtrl = true;
    press(ImGuiKey_A);
    ImGui::GetIO().KeyCtrl = false;
    ImGui::GetIO().AddInputCharactersUTF8(text);
    frames(2);
  }
  Form() { frames(2); }
};

}  // namespace

TEST_CASE("what is typed is taken over once, by Enter, Tab or a click elsewhere; not before, and not after Esc") {
  Form form;
  form.click(form.at[0]);
  form.type("leaf");
  CHECK(form.name == "ring");
  form.press(ImGuiKey_Enter);
  CHECK(form.name == "leaf");
  form.click(form.at[0]);
  form.type("star");
  form.click({390, 290});
  CHECK(form.name == "star");
  form.click(form.at[1]);
  form.type("17");
  form.press(ImGuiKey_Tab);
  CHECK(form.number == 17);
  CHECK(form.taken == 3);
  form.click(form.at[0]);
  form.type("lost");
  form.press(ImGuiKey_Escape);
  form.click({390, 290});
  CHECK(form.name == "star");
  CHECK(form.taken == 3);
}

TEST_CASE("both numbers of a hole are kept when Tab leads from one to the other") {
  Form form;
  form.click(form.at[2]);
  form.type("-10");
  form.press(ImGuiKey_Tab);
  form.type("25");
  form.click({390, 290});
  CHECK(form.hole == std::array{-10, 25});
}

TEST_CASE("a field that is merely looked at changes nothing") {
  Form form;
  for (const ImVec2 at : form.at) form.click(at);
  form.click({390, 290});
  CHECK(form.taken == 0);
}

TEST_CASE("leave_field takes over what is being typed") {
  Form form;
  form.click(form.at[0]);
  form.type("leaf");
  form.frames(1);
  app::leave_field();
  form.frames(1);
  CHECK(form.name == "leaf");
  CHECK(form.w.desk->typing.id == 0);
}

TEST_CASE("what was being typed when its panel went away is not taken over when it comes back") {
  Form form;
  form.click(form.at[0]);
  form.type("leaf");
  for (int i = 0; i < 3; ++i) {  // frames without the form
    ImGui::NewFrame();
    ImGui::Render();
  }
  form.frames(3);
  CHECK(form.name == "ring");
  CHECK(form.taken == 0);
}
