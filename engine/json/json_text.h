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

  const std::string& text() const { return text_; }
  /// The text itself; nothing is left.
  std::string take() { return std::move(text_); }

 private:
  JsonText& begin(char bracket);
  JsonText& end(char bracket);
  void separate();

  std::string text_;
  bool needs_comma_ = false;
};

}  // namespace proofstone
