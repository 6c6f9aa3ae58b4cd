#pragma once

#include <QString>
#include <span>
#include <string_view>

namespace ui {

/// A comfortable range for a slider [the field's unit]; numbers beyond it are typed.
struct SliderRange {
  double least = 0, most = 0;
  bool wanted() const { return most > least; }
};

/// One field in the editor.
struct EditorField {
  std::string_view id;
  SliderRange slider{};
};

/// One fold of the editor: what belongs to one step of the job.
struct EditorSection {
  const char* id;
  const char* title;  ///< untranslated
  std::span<const EditorField> fields;
  bool open;  ///< unfolded when the program starts
};

/// All folds in the order of the job. The coats' own fields are in the coats' list.
std::span<const EditorSection> editorSections();

QString titleOf(const EditorSection& section);

}  // namespace ui
