#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace core::exchange {

/// A short form as typed, in capitals and plain digits.
struct TypedForm {
  std::vector<std::string> parts;  ///< the version first: "TW1", "S:RE", "L7.2"
  std::string check;               ///< the group after the last '*'; empty when there is none
};

/// Parts and check group of a typed text. Letters that may stand for digits do so after a token and in the
/// check group; a blank before anything but a letter, and after ':' and '/', parts nothing.
TypedForm typedForm(std::string_view text);

/// Letters with which a part begins: one, or two when the second is none of I, L, O.
std::string_view tokenOf(std::string_view part);

/// Parts with one blank between them, as they are written.
std::string joinedParts(const std::vector<std::string>& parts);

/// CRC-16/CCITT-FALSE: polynomial 1021 (hex), begun with FFFF, not reflected; "123456789" gives 29B1.
/// @source CRC RevEng catalogue, CRC-16/IBM-3740
std::uint16_t crc16(std::string_view bytes);

/// crc16 as four hexadecimal digits in capitals.
std::string checkGroup(std::string_view text);

}  // namespace core::exchange
