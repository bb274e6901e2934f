package org.shotledger.study;

import java.util.ArrayList;
import java.util.List;

/** Every combination of the axes of some roles: their places on the axes, and what they add to the index. */
final class Product {
    private final Space space;
    private final List<Integer> axes = new ArrayList<>();

    Product(Space space, Role... roles) {
        this.space = space;
        for (int i = 0; i < space.axes().size(); i++) {
            if (List.of(roles).contains(Role.of(space.axes().get(i).path()))) {
                axes.add(i);
            }
        }
    }

    int size() {
        return axes.stream()
                .mapToInt(i -> space.axes().get(i).settings().size())
                .reduce(1, Math::multiplyExact);
    }

    /** What one element adds to the index of a combination. */
    long offset(int element) {
        long offset = 0;
        int rest = element;
        for (int n = axes.size() - 1; n >= 0; n--) {
            int length = space.axes().get(axes.get(n)).settings().size();
            offset += (rest % length) * space.stride(axes.get(n));
            rest /= length;
        }
        return offset;
    }
}
