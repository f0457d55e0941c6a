#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace proofstone {

/// JSON written straight down as text, in the order in which it is said: for answers so large that
/// a tree of values would cost more than what they tell. Commas are its own business; a key comes
/// before each value of an object. Text that is not UTF-8 is written with U+FFFD for each bad byte,
/// and a number that is not finite as null, so that what it gives always reads.
class JsonText {
 public:
  /// How letters beyond ASCII are written: as they are, for people, or as escapes, which a browser
  /// reads and hands from thread to thread in a fraction of the time.
  enum class Letters { as_they_are, escaped };

  explicit JsonText(Letters letters = Letters::as_they_are) : letters_(letters) {}

  JsonText& begin_object() { return begin('{'); }
  JsonText& end_object() { return end('}'); }
  JsonText& begin_array() { return begin('['); }
  JsonText& end_array() { return end(']'); }

  /// The name of the value that is said next. Plain ASCII without quotation marks: our own words.
  JsonText& key(std::string_view name);

  JsonText& value(std::string_view text);
  JsonText& value(const std::string& text) { return value(std::string_view(text)); }
  JsonText& value(const char* text) { return value(std::string_view(text)); }
  JsonText& value(double number);
  JsonText& value(int number);
  JsonText& value(bool truth);
  JsonText& value(const std::vector<std::string>& texts);

  /// A key with its value.
  template <class Value>
  JsonText& field(std::string_view name, const Value& what) {
    return key(name).value(what);
  }

  std::string_view text() const { return std::string_view(space_).substr(0, size_); }
  /// The text itself; nothing is left.
  std::string take();

 private:
  JsonText& begin(char bracket);
  JsonText& end(char bracket);
  /// Where up to `bytes` more may be written; `wrote_to` says how far it came.
  char* room_for(std::size_t bytes);
  void wrote_to(const char* end) { size_ = static_cast<std::size_t>(end - space_.data()); }
  char* separated(char* at);
  char* string(char* at, std::string_view what) const;
  char* character(char* at, std::string_view what, std::size_t length) const;

  std::string space_;  ///< the text, and what is kept ready for more
  std::size_t size_ = 0;
  Letters letters_;
  bool needs_comma_ = false;
};

}  // namespace proofstone
