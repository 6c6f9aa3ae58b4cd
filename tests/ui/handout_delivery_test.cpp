#include "core/hydraulics/figures.h"
#include "tests/ui/handout_site_support.h"
#include "ui/text/hydraulics_words.h"
#include "ui/text/words.h"

#include <algorithm>

#include <catch2/catch.hpp>

using core::Unit;
using support::contentOf;
using support::english;
using support::PageRecord;
using support::pagesWith;
using support::ReadPages;
using ui::handouts::Content;
using ui::handouts::Handout;

namespace words = ui::words;

TEST_CASE("the sheet of pipes prints each line with its losses, its pressures and the smallest size") {
  const Content content = contentOf(support::deliveryProject(), english());
  const auto& plan = *content.plan.delivery;
  const auto& format = content.format;
  const ReadPages page(content, "P7");
  page.hasAll(words::sourceLineAnswers(plan, format));
  page.hasAll(words::fieldLineAnswers(plan, format));
  for (const auto* line : {&*plan.source, &plan.field->pipe}) {
    REQUIRE(line->full);
    REQUIRE(line->low);
    const auto &full = *line->full, &low = *line->low;
    const auto metres = [&](const char* what, double a, double b) {
      page.hasRow({what, page.metres(a), page.metres(b)});
    };
    page.hasRow({"Flow, end wide open", words::flowText(full.flow_m3_s, format),
                 words::flowText(low.flow_m3_s, format)});
    page.hasRow({"By Hazen-Williams, to check", words::flowText(full.hazen_williams_m3_s, format),
                 words::flowText(low.hazen_williams_m3_s, format)});
    page.hasRow({"Velocity", format.quantity(full.velocity_m_s, Unit::metre_per_second, 2),
                 format.quantity(low.velocity_m_s, Unit::metre_per_second, 2)});
    metres("Lost by friction", full.friction_head_m, low.friction_head_m);
    metres("Lost in bends and valves", full.minor_head_m, low.minor_head_m);
    page.hasRow({"Pressure, end shut", format.quantity(full.static_bar, Unit::bar, 1)});
    page.hasRow({"Left of the pressure class", format.quantity(full.class_left_bar.value(), Unit::bar, 1)});
    page.has("length " + page.metres(full.length_m, 1));
    page.hasRow({"bore", format.quantity(1000 * line->line.bore.diameter_m, Unit::millimetre, 1)});
    REQUIRE(line->smallest);
    REQUIRE(*line->smallest);
    page.has("has " + format.quantity((*line->smallest)->size.outside_mm, Unit::millimetre, 0) +
             " outside diameter");
  }
  REQUIRE_FALSE(plan.source->full->humps.empty());
  page.has("at " + page.metres(plan.source->full->humps.front().station_m, 1));
}

TEST_CASE("the sheet of pipes prints siphon, outlets and the time the tank takes to empty") {
  const Content content = contentOf(support::deliveryProject(), english());
  const auto& field = *content.plan.delivery->field;
  const auto& format = content.format;
  const ReadPages page(content, "P7");
  const auto& full = field.siphon_full->value();
  const auto& low = field.siphon_low->value();
  page.hasRow({"Top over the water", page.metres(full.lift_m), page.metres(low.lift_m)});
  page.hasRow({"Most that it may be, at rest", page.metres(full.most_lift_m), page.metres(low.most_lift_m)});
  page.hasRow(
      {"Speed that clears air", format.quantity(full.clearing_velocity_m_s, Unit::metre_per_second, 2)});
  page.hasRow({"Water that fills it", format.quantity(1000 * full.primed_with_m3, Unit::litre, 1)});
  page.hasRow(
      {"Head left at them", page.metres(field.head_full_m.value()), page.metres(field.head_low_m.value())});
  page.hasRow({"Head wanted", page.metres(field.check->head.typical)});
  page.has(words::durationText(field.emptying->seconds, format));
  CHECK_FALSE(ReadPages(contentOf(support::liningPipeProject(), english()), "P7")
                  .text.contains("The siphon Tank full"));
}

TEST_CASE("a line in which nothing flows says why on its sheet") {
  const Content content = contentOf(support::dryLinesProject(), english());
  REQUIRE_FALSE(content.plan.delivery->source->full);
  const ReadPages page(content, "P7");
  page.has(words::hydraulicsFault(content.plan.delivery->source->full.error()));
}

TEST_CASE("the sheet of the overflow prints storm, freeboard, the blocked case and the channel") {
  const Content content = contentOf(support::deliveryProject(), english());
  const auto& plan = content.plan.delivery->overflow;
  const auto& format = content.format;
  const ReadPages page(content, "P8");
  page.hasAll(words::overflowAnswers(*content.plan.delivery, format));
  page.hasRow({"Storm", "80 mm per hour"});
  page.hasRow({"Roof led in", format.quantity(45, Unit::square_metre, 1)});
  page.hasRow(
      {"The tank's own opening", format.quantity(content.plan.tank.brim_area_m2, Unit::square_metre, 1)});
  page.hasRow({"Rain that runs in", words::flowText(plan.storm_m3_s, format)});
  page.hasRow({"Together", words::flowText(plan.flow_m3_s, format)});
  page.hasRow({"Freeboard left in the storm", page.metres(plan.state->freeboard_left_m)});
  page.hasRow({"Freeboard wanted", page.metres(plan.wanted_freeboard_m)});
  REQUIRE(plan.blocked->parts.size() == 2);
  page.hasRow({"over the low part of the rim", page.metres(plan.blocked->parts[0].depth_m, 3),
               words::flowText(plan.blocked->parts[0].flow_m3_s, format)});
  page.hasRow({"Water in it", page.metres(plan.spill->depth_m)});
  page.hasRow({"Speed", format.quantity(plan.spill->velocity_m_s, Unit::metre_per_second, 2)});
  ReadPages(contentOf(support::liningPipeProject(), english()), "P8").has("100 mm per hour, planning value");
}

TEST_CASE("the sheet of the silt trap prints its sizes for the grain and how often it is cleaned") {
  const Content content = contentOf(support::deliveryProject(), english());
  const auto& trap = content.plan.delivery->trap.trap.value();
  const ReadPages page(content, "P8");
  page.hasAll(words::siltTrapAnswers(*content.plan.delivery, content.format));
  page.hasRow({"Smallest grain that must stay behind 0.10 mm"});
  page.hasRow({"Length", page.metres(trap.length_m)});
  page.hasRow({"Width", page.metres(trap.width_m)});
  page.hasRow({"Depth, all together", page.metres(trap.depth_m)});
  page.hasRow({"Of it for water that settles", page.metres(trap.settling_depth_m)});
  page.hasRow({"Of it for mud", page.metres(trap.deposit_depth_m)});
  // 0.44 sqrt(d mm), civil works guidelines for micro-hydropower, chapter 5: 0.139 m/s for 0.1 mm
  page.hasRow({"Water may run through at most at 0.14 m/s"});
  page.hasRow({"Clean it out every 7 days"});
}

TEST_CASE("the leak result stands with the bands and both published marks") {
  const Content content = contentOf(support::deliveryProject(), english());
  const ReadPages page(content, "P8");
  page.hasAll(words::leakAnswers(*content.plan.delivery, content.format));
  page.hasRow({"Leak 5.0 mm per day"});  // 9 mm less 4 mm in 24 hours
  // 10 mm in 7 days; 0.1 % of the volume a day
  page.has("1.4 mm per day not kept");
  page.has("0.1 % of the volume a day");
  page.has("Find the cracks and mend them");
  const ReadPages untested(contentOf(support::liningPipeProject(), english()), "P8");
  CHECK_FALSE(untested.text.contains("Error of the readings"));
  untested.has("No leak test is entered.");
  untested.has("up to 2 mm per day");
}

TEST_CASE("the leak form has steps, room for readings, the reckoning and the bands as our own proposal") {
  for (const auto paper : {QPageSize::A4, QPageSize::Letter}) {
    const Content content = contentOf(support::levelProject(), english());
    const Handout handout(content, {paper});
    REQUIRE(pagesWith(handout, "F6").size() == 1);
    const ReadPages page(content, "F6");
    for (const char* part : {"Date", "Time", "Tank, mm", "Bucket, mm", "Signature",
                             "Set a light bucket afloat", "fall in the tank less fall in the bucket"})
      page.has(part);
    // 1 mm on 1 m2 is 1 litre
    page.has("one millimetre is " +
             content.format.quantity(content.plan.tank.full_surface_m2, Unit::litre, 0));
    for (const auto& band : core::hydraulics::figuresOf("leak.")) {
      if (band.unit == Unit::mm_per_day)
        page.has("up to " + content.format.quantity(band.typical, Unit::mm_per_day, 0));
    }
    page.has(words::sourceText("own"));
    const PageRecord record(handout, pagesWith(handout, "F6").front());
    const auto rules = std::ranges::count_if(record.recorder.strokes, [](const auto& stroke) {
      const QRectF box = stroke.path.boundingRect();
      return box.width() < 1e-9 && box.height() > 50;
    });
    CHECK(rules == 6);  // edges of five columns
  }
}
