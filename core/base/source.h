#pragma once

#include <span>
#include <string_view>

namespace core {

/// How well a figure is founded.
enum class Tag {
  pub,   ///< published; the citation names the source
  cp,    ///< common practice, no source
  mem,   ///< from memory, not yet verified
  own,   ///< this project's proposal; a practitioner should change it
  data,  ///< entered by the user or fixed by the design itself
};

/// One place where a figure comes from. Every default and formula names a source by its key.
struct Source {
  std::string_view key;
  Tag tag;
  std::string_view
      citation;  ///< author, title, year, publisher, place in the text; proper names are not translated
};

/// All sources, each key once.
std::span<const Source> sources();

/// The source with `key`. @throws std::logic_error when there is none.
const Source& source(std::string_view key);

}  // namespace core
