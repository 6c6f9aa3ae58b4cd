#pragma once

#include "core/plan.h"
#include "ui/text/finding_sentences.h"
#include "ui/text/formatter.h"
#include "ui/text/words_table.h"

#include <QString>
#include <QStringList>
#include <span>

namespace ui::words {

QString textureName(core::site::Texture texture);  ///< "sandy clay loam"

/// What the jars, the balls and ribbons, the test pits and the hose level say, one sentence each; what to do
/// when nothing was noted yet.
QStringList jarAnswers(const core::Plan& plan, const Formatter& format);
QStringList feelAnswers(const core::Plan& plan, const Formatter& format);
QStringList pitAnswers(const core::Plan& plan, const Formatter& format);
QStringList slopeAnswers(const core::Project& project, const core::Plan& plan, const Formatter& format);
/// All that the notes say in short, then what putting them in place would change.
QStringList notesAnswers(const core::Project& project, const core::Plan& plan, const Formatter& format);

/// Labels, help and choices of the fields of the notes; sentences of the findings that rest on them.
std::span<const Entry> notesLabels();
std::span<const Entry> notesHelp();
std::span<const Entry> notesChoices();
std::span<const SentenceOf> notesSentences();

}  // namespace ui::words
