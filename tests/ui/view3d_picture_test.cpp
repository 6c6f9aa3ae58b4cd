#include "tests/ui/view3d_support.h"
#include "ui/view3d/palette.h"
#include "ui/view3d/software_view.h"

#include <catch2/catch.hpp>

using namespace core::geometry;
using namespace view3d_test;
using Eigen::Vector3d;

namespace {

Kind eachKind() {
  return GENERATE(Kind::qt3d, Kind::software);
}

const QColor kLight = ui::view3d::surroundings(false).background;
const QColor kDark = ui::view3d::surroundings(true).background;

/// A view on the screen that shows a scene from one of the standard sides.
struct Shown {
  Shown(Kind kind, const Look& look, ViewPreset preset) : scene(sceneOf(look)), view(makeView(kind)) {
    show(*view);
    view->setScene(scene);
    camera = cameraFor(preset, scene, *view);
    view->setCamera(camera);
  }

  QColor at(const Vector3d& point) { return colourAt(picture(*view), camera, point); }

  Scene scene;
  std::unique_ptr<ui::PitView> view;
  Camera camera;
};

QString lengthText(const Dimension& dimension) {
  return QString::number(dimension.length_m, 'f', 2);
}

}  // namespace

TEST_CASE("seen from above the middle is water, the margin is ground and round it lies the background") {
  Shown shown(eachKind(), {.cut = false}, ViewPreset::plan);
  const QImage image = picture(*shown.view);
  CHECK(isWatery(colourAt(image, shown.camera, {0, 0, 1.1})));
  CHECK(isOf(colourAt(image, shown.camera, {shown.scene.most.x() - 0.4, 0, 1.7}), Role::ground));
  CHECK(image.pixelColor(2, 2) == kLight);
}

TEST_CASE("without water the floor of coat 2 shows") {
  Shown shown(eachKind(), {.water_m = 0, .cut = false}, ViewPreset::plan);
  CHECK(isOf(shown.at({1, 0.5, 0}), Role::coat, 2));
}

TEST_CASE(
    "up a line through the section lie ground, stone bed, coat 1, coat 2, water and then the far wall") {
  Shown shown(eachKind(), {}, ViewPreset::section);
  const QImage image = picture(*shown.view);
  const auto at = [&](double z) { return colourAt(image, shown.camera, {0.7, 0, z}); };
  const double lining = kCoat1_m + kCoat2_m;
  CHECK(isOf(at(-lining - kStoneBed_m - 0.2), Role::ground));
  CHECK(isOf(at(-lining - kStoneBed_m / 2), Role::stone_bed));
  CHECK(isOf(at(-kCoat2_m - kCoat1_m / 2), Role::coat, 1));
  CHECK(isOf(at(-kCoat2_m / 2), Role::coat, 2));
  CHECK(isWatery(at(0.6)));
  CHECK(isOf(at(1.4), Role::coat, 2));
  CHECK(at(2.6) == kLight);
}

TEST_CASE("the two coats, the bed and the ground cannot be taken for one another") {
  const QColor bed = ui::view3d::sectionColour({"", Role::stone_bed, 0, {}, 0});
  const QColor coat_1 = ui::view3d::sectionColour({"", Role::coat, 1, {}, 0});
  CHECK_FALSE(isOf(bed, Role::coat, 1));
  CHECK_FALSE(isOf(bed, Role::ground));
  CHECK_FALSE(isOf(coat_1, Role::coat, 2));
  CHECK_FALSE(isOf(coat_1, Role::ground));
  // told apart without colour, too, by how light they are
  CHECK(ui::view3d::sectionColour({"", Role::coat, 2, {}, 0}).lightness() > coat_1.lightness() + 25);
}

TEST_CASE("the picture is neither upside down nor mirrored") {
  Shown shown(eachKind(), {}, ViewPreset::section);
  const Part& person = shown.scene.parts.back();
  REQUIRE(person.id == "person");
  Vector3d middle = Vector3d::Zero();
  for (const Vector3d& point : person.mesh.points) middle += point / double(person.mesh.points.size());
  REQUIRE(std::abs(middle.x()) > 0.5);
  const QImage image = picture(*shown.view);
  CHECK(isOf(colourAt(image, shown.camera, middle), Role::person));
  CHECK(colourAt(image, shown.camera, {-middle.x(), middle.y(), middle.z()}) == kLight);
  CHECK(colourAt(image, shown.camera, {middle.x(), 0, shown.scene.most.z() + 0.05}) == kLight);
}

TEST_CASE("a deeper tank shows at once") {
  Shown shown(eachKind(), {.depth_m = 1.2, .water_m = 0.5}, ViewPreset::section);
  const Vector3d above_rim(3.9, 0, 1.5);  // over the ground beside the pit
  CHECK(shown.at(above_rim) == kLight);
  shown.view->setScene(sceneOf({.depth_m = 1.9, .water_m = 0.5}));
  CHECK(isOf(shown.at(above_rim), Role::ground));
}

TEST_CASE("the water follows its level") {
  Shown shown(eachKind(), {.water_m = 0.5}, ViewPreset::section);
  const Vector3d between(0.7, 0, 0.9);
  CHECK_FALSE(isWatery(shown.at(between)));
  shown.view->setScene(sceneOf({.water_m = 1.2}));
  CHECK(isWatery(shown.at(between)));
  shown.view->setScene(sceneOf({.water_m = 0}));
  CHECK_FALSE(isWatery(shown.at(between)));
}

TEST_CASE("a hidden part is gone, what lies behind it shows, and it comes back") {
  Shown shown(eachKind(), {}, ViewPreset::section);
  const Vector3d in_water(0.7, 0, 0.6), in_coat_1(0.7, 0, -kCoat2_m - kCoat1_m / 2);
  const QImage whole = picture(*shown.view);
  shown.view->setHiddenParts({"water", "coat_1"});
  const QImage less = picture(*shown.view);
  CHECK(isOf(colourAt(less, shown.camera, in_water), Role::coat, 2));
  CHECK_FALSE(isOf(colourAt(less, shown.camera, in_coat_1), Role::coat, 1));
  shown.view->setHiddenParts({});
  CHECK(meanDifference(picture(*shown.view), whole) < 0.01);
}

TEST_CASE("a part that is hidden before the scene comes stays hidden") {
  const auto view = makeView(eachKind());
  view->setHiddenParts({"water"});
  view->setScene(sceneOf({}));
  show(*view);
  const Camera camera = cameraFor(ViewPreset::section, sceneOf({}), *view);
  view->setCamera(camera);
  CHECK_FALSE(isWatery(colourAt(picture(*view), camera, {0.7, 0, 0.6})));
}

TEST_CASE("meshes grow and shrink without a trace") {
  Shown shown(eachKind(), {.facets = 24, .shape = core::Shape::round}, ViewPreset::oblique);
  const QImage first = picture(*shown.view);
  for (const int facets : {192, 12, 96}) {
    const Scene scene = sceneOf({.facets = facets, .shape = core::Shape::round});
    shown.view->setScene(scene);
    const QImage whole = ui::renderSoftware(scene, shown.camera, {480, 360}, false, nullptr);
    CHECK(meanDifference(picture(*shown.view), whole) < 2);
  }
  shown.view->setScene(shown.scene);
  CHECK(meanDifference(picture(*shown.view), first) < 0.01);
}

TEST_CASE("an empty scene shows the background alone") {
  const auto view = makeView(eachKind());
  show(*view);
  view->setScene(sceneOf({}));
  view->setScene(Scene{{}, {}, Vector3d::Zero(), Vector3d::Zero()});
  const QImage image = picture(*view);
  CHECK(image.pixelColor(image.width() / 2, image.height() / 2) == kLight);
}

TEST_CASE("dark surroundings") {
  Shown shown(eachKind(), {}, ViewPreset::section);
  shown.view->setDark(true);
  CHECK(picture(*shown.view).pixelColor(2, 2) == kDark);
  shown.view->setDark(false);
  CHECK(picture(*shown.view).pixelColor(2, 2) == kLight);
}

TEST_CASE("dimension lines and their texts come and go") {
  Shown shown(eachKind(), {}, ViewPreset::section);
  const QImage bare = picture(*shown.view);
  shown.view->setDimensionText(lengthText);
  const QImage with_lines = picture(*shown.view);
  CHECK(meanDifference(with_lines, bare) > 0.5);
  shown.view->setDimensionText([](const Dimension&) { return QStringLiteral("88888888"); });
  CHECK(meanDifference(picture(*shown.view), with_lines) > 0.1);
  shown.view->setDimensionsShown(false);
  CHECK(meanDifference(picture(*shown.view), bare) < 0.01);
}

TEST_CASE("after a resize the picture fills the new size") {
  Shown shown(eachKind(), {}, ViewPreset::section);
  shown.view->resize(640, 300);
  REQUIRE(waitFor([&] { return picture(*shown.view).size() == QSize(640, 300); }));
  shown.camera = cameraFor(ViewPreset::section, shown.scene, *shown.view);
  shown.view->setCamera(shown.camera);
  const QImage image = picture(*shown.view);
  CHECK(isWatery(colourAt(image, shown.camera, {0.7, 0, 0.6})));
  CHECK(isOf(colourAt(image, shown.camera, {-3.9, 0, 1.5}), Role::ground));
  CHECK(image.pixelColor(637, 2) == kLight);
}

TEST_CASE("a view that was hidden shows the same again") {
  Shown shown(eachKind(), {}, ViewPreset::oblique);
  const QImage before = picture(*shown.view);
  for (int k = 0; k < 3; ++k) {
    shown.view->hide();
    show(*shown.view);
  }
  CHECK(meanDifference(picture(*shown.view), before) < 0.01);
}

TEST_CASE("nobody having said otherwise, the whole thing is shown from the south-east") {
  const auto view = makeView(eachKind());
  view->setScene(sceneOf({}));
  show(*view);
  const Camera expected = cameraFor(ViewPreset::oblique, sceneOf({}), *view);
  CHECK(view->camera() == expected);
  CHECK(isWatery(colourAt(picture(*view), expected, {0.7, 0, 0.6})));
}

TEST_CASE("both views show the same picture") {
  const auto preset = GENERATE(ViewPreset::plan, ViewPreset::section, ViewPreset::oblique);
  const auto shape = GENERATE(core::Shape::rectangle, core::Shape::round);
  const Look look{.cut = preset != ViewPreset::plan, .shape = shape};
  Shown one(Kind::qt3d, look, preset), other(Kind::software, look, preset);
  one.view->setDimensionText(lengthText);
  other.view->setDimensionText(lengthText);
  const QImage a = picture(*one.view), b = picture(*other.view);
  CHECK(meanDifference(a, b) < 2);  // of 255; the edges are smoothed differently
  for (const Part& part : one.scene.parts) {
    const Vector3d corner = part.mesh.points.front();
    CHECK(colourAt(a, one.camera, corner).isValid());
  }
}

TEST_CASE("a picture drawn without a window is the window's picture") {
  Shown shown(Kind::software, {}, ViewPreset::oblique);
  shown.view->setDimensionText(lengthText);
  const QImage image = ui::renderSoftware(shown.scene, shown.camera, {480, 360}, false, lengthText);
  CHECK(image.size() == QSize(480, 360));
  CHECK(meanDifference(image, picture(*shown.view)) < 0.01);
}

TEST_CASE("a picture can be had of a view that is not on the screen") {
  const auto view = makeView(eachKind());
  const Scene scene = sceneOf({});
  view->resize(480, 360);
  view->setScene(scene);
  view->setHiddenParts({"person"});
  const Camera camera = cameraFor(ViewPreset::section, scene, *view);
  view->setCamera(camera);
  const QImage image = picture(*view);
  CHECK(isWatery(colourAt(image, camera, {0.7, 0, 0.6})));
  CHECK(meanDifference(image, ui::renderSoftware(scene, camera, {480, 360}, false, nullptr)) > 0.2);
}

TEST_CASE("the software view draws coarse while things change and smooth when they rest") {
  Shown shown(Kind::software, {}, ViewPreset::oblique);
  const QImage smooth = picture(*shown.view);
  shown.view->setScene(shown.scene);
  CHECK(meanDifference(shown.view->grab().toImage(), smooth) > 0.2);
  CHECK(waitFor([&] { return meanDifference(shown.view->grab().toImage(), smooth) < 0.01; }));
}
