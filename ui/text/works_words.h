#pragma once

#include "core/plan.h"
#include "core/project/works.h"
#include "ui/text/finding_sentences.h"
#include "ui/text/formatter.h"
#include "ui/text/words_table.h"

#include <QString>
#include <QStringList>
#include <span>
#include <string_view>

namespace ui::words {

/// What a rate of core::works::rates() is for: "carrying spoil up to 20 m".
QString rateName(std::string_view key);
/// Unit of a labour line ("m3", "m2", "m", "day", "job") after an amount: "12.4 m³", "3 days", "1 job".
QString workAmount(double quantity, std::string_view unit, const Formatter& format);
/// "2½ days", "half a day"; quarters of days.
QString dayCount(double days, const Formatter& format);

QString masonsAmong(int count, const Formatter& format);  ///< "3 of them masons"
/// What tank a crew could plaster in one go, rounded down: "These people could plaster ...".
QString sizeForCrew(const core::works::SizeForCrew& size, const Formatter& format);
/// A finding's sentence with that size behind it, when the finding has one.
QString withSizeForCrew(const QString& sentence, const Values& values);
/// What is measured in the records: "Digging"; dry_to_wet or a choice of records.work[].work.
QString recordedName(std::string_view work);
/// A figure of it with its unit: "0.62 person-days per m³".
QString recordedAmount(double value, std::string_view work, const Formatter& format);

/// Sentences, the one that matters most first. When do the works begin and end, which tasks leave no room,
/// how many people there are at most.
QStringList datesAnswers(const core::works::Works& works, const Formatter& format);
/// Can each coat be put on in one go: people, masons, batches an hour, minutes for a batch, water and sacks;
/// what crew or what size would do.
QStringList oneGoAnswers(const core::works::Works& works, const Formatter& format);
/// When filling starts and when the tank is full, until when the walls must stay wet, water by hand.
QStringList fillingAnswers(const core::works::Works& works, const Formatter& format);
/// The chance of undisturbed coats as planned, what would disturb them, the best start.
QStringList windowAnswers(const core::works::Works& works, const Formatter& format);
/// What the records say: median, count, spread, beside what is entered; whether they are in force.
QStringList recordAnswers(const core::Plan& plan, const Formatter& format);

/// Labels, help and choices of the fields of works and records; sentences of the codes works_ and records_.
std::span<const Entry> worksLabels();
std::span<const Entry> worksHelp();
std::span<const SentenceOf> worksSentences();

}  // namespace ui::words
