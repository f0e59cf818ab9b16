package org.taperwright.catalogue.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class NaturalOrderTest {
    @Test
    void numbers_within_names_count_by_their_value() {
        List<String> names = new ArrayList<>(List.of("K file 100", "k file 8", "K file 15", "H file 40", "K file 08"));
        names.sort(NaturalOrder.OF_NAMES);

        assertThat(names).containsExactly("H file 40", "k file 8", "K file 08", "K file 15", "K file 100");
    }

    @Test
    void it_is_an_order_on_any_names() {
        Random random = new Random(7);
        List<String> names = new ArrayList<>();
        for (int i = 0; i < 400; i++) {
            StringBuilder name = new StringBuilder();
            for (int j = random.nextInt(6); j >= 0; j--) {
                name.append("aB0 19/.".charAt(random.nextInt(8)));
            }
            names.add(name.toString());
        }
        Collections.shuffle(names, random);

        names.sort(NaturalOrder.OF_NAMES);

        for (int i = 0; i < names.size(); i++) {
            for (int j = i; j < names.size(); j++) {
                assertThat(NaturalOrder.OF_NAMES.compare(names.get(i), names.get(j)))
                        .as("%s before %s", names.get(i), names.get(j))
                        .isLessThanOrEqualTo(0);
            }
        }
    }
}
