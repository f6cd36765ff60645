package linkwright.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class AddressesTest {
  private static List<String> urls(String row) {
    return Addresses.in(row).stream().map(Addresses.Link::url).toList();
  }

  @Test
  void sources_lead_where_they_can_be_read() {
    assertThat(urls("from lfa-wire.com, data sheet for C10200"))
        .containsExactly("https://lfa-wire.com");
    assertThat(urls("to be looked up in doi 10.1595/147106705X93359."))
        .containsExactly("https://doi.org/10.1595/147106705X93359");
    assertThat(urls("art. 1 (BWBR0042284); art. 2 (BWBR0043723)"))
        .containsExactly(
            "https://wetten.overheid.nl/BWBR0042284", "https://wetten.overheid.nl/BWBR0043723");
    assertThat(urls("see https://example.org/a, page 2")).containsExactly("https://example.org/a");
  }

  @Test
  void what_is_no_address_leads_nowhere() {
    assertThat(urls("10.36 g of 0.9 mm; my-plan.yaml; Ana@bench.com; Linkwright. de facto"))
        .isEmpty();
  }

  @Test
  void a_link_stands_where_its_words_stand() {
    Addresses.Link link = Addresses.in("from lfa-wire.com, data").get(0);
    assertThat("from lfa-wire.com, data".substring(link.from(), link.to()))
        .isEqualTo("lfa-wire.com");
  }
}
