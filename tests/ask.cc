// Answers the request on standard input as every shell would: the native side of
// tests/agreement.mjs.
#include <iostream>
#include <iterator>
#include <string>

#include "report/request.h"

int main() {
  const std::string request(std::istreambuf_iterator<char>(std::cin), {});
  std::cout << proofstone::answer_request(request);
}
