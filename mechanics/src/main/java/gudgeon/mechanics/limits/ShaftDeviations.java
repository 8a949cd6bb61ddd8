package gudgeon.mechanics.limits;

import java.util.OptionalDouble;

/**
 * Fundamental deviations of shafts for sizes up to 500 mm, as they are rounded in ISO 286-1:2010, tables 4 and 5. Those of holes
 * follow from them by the general and the special rule ({@link HoleDeviations}).
 */
final class ShaftDeviations {
    /**
     * Upper deviation es below the nominal size, micrometres, signs left off. First column: sizes up to and including so many mm.
     * Letters cd, ef and fg are for sizes up to 10 mm.
     */
    private static final String BELOW = """
            mm    a    b   c  cd   d   e  ef  f  fg  g
            3   270  140  60  34  20  14  10  6   4  2
            6   270  140  70  46  30  20  14  10  6  4
            10  280  150  80  56  40  25  18  13  8  5
            14  290  150  95   .  50  32   .  16  .  6
            18  290  150  95   .  50  32   .  16  .  6
            24  300  160 110   .  65  40   .  20  .  7
            30  300  160 110   .  65  40   .  20  .  7
            40  310  170 120   .  80  50   .  25  .  9
            50  320  180 130   .  80  50   .  25  .  9
            65  340  190 140   . 100  60   .  30  . 10
            80  360  200 150   . 100  60   .  30  . 10
            100 380  220 170   . 120  72   .  36  . 12
            120 410  240 180   . 120  72   .  36  . 12
            140 460  260 200   . 145  85   .  43  . 14
            160 520  280 210   . 145  85   .  43  . 14
            180 580  310 230   . 145  85   .  43  . 14
            200 660  340 240   . 170 100   .  50  . 15
            225 740  380 260   . 170 100   .  50  . 15
            250 820  420 280   . 170 100   .  50  . 15
            280 920  480 300   . 190 110   .  56  . 17
            315 1050 540 330   . 190 110   .  56  . 17
            355 1200 600 360   . 210 125   .  62  . 18
            400 1350 680 400   . 210 125   .  62  . 18
            450 1500 760 440   . 230 135   .  68  . 20
            500 1650 840 480   . 230 135   .  68  . 20
            """;

    /** Lower deviation ei, micrometres: of j by grade (j6 is also that of j5), of k for grades 4 to 7. */
    private static final String ABOVE = """
            mm  j6  j7  j8 k  m  n  p   r   s   t   u   v   x   y    z   za   zb   zc
            3   -2  -4  -6 0  2  4  6  10  14   .  18   .  20   .   26   32   40   60
            6   -2  -4  .  1  4  8 12  15  19   .  23   .  28   .   35   42   50   80
            10  -2  -5  .  1  6 10 15  19  23   .  28   .  34   .   42   52   67   97
            14  -3  -6  .  1  7 12 18  23  28   .  33   .  40   .   50   64   90  130
            18  -3  -6  .  1  7 12 18  23  28   .  33  39  45   .   60   77  108  150
            24  -4  -8  .  2  8 15 22  28  35   .  41  47  54  63   73   98  136  188
            30  -4  -8  .  2  8 15 22  28  35  41  48  55  64  75   88  118  160  218
            40  -5 -10  .  2  9 17 26  34  43  48  60  68  80  94  112  148  200  274
            50  -5 -10  .  2  9 17 26  34  43  54  70  81  97 114  136  180  242  325
            65  -7 -12  .  2 11 20 32  41  53  66  87 102 122 144  172  226  300  405
            80  -7 -12  .  2 11 20 32  43  59  75 102 120 146 174  210  274  360  480
            100 -9 -15  .  3 13 23 37  51  71  91 124 146 178 214  258  335  445  585
            120 -9 -15  .  3 13 23 37  54  79 104 144 172 210 254  310  400  525  690
            140 -11 -18 .  3 15 27 43  63  92 122 170 202 248 300  365  470  620  800
            160 -11 -18 .  3 15 27 43  65 100 134 190 228 280 340  415  535  700  900
            180 -11 -18 .  3 15 27 43  68 108 146 210 252 310 380  465  600  780 1000
            200 -13 -21 .  4 17 31 50  77 122 166 236 284 350 425  520  670  880 1150
            225 -13 -21 .  4 17 31 50  80 130 180 258 310 385 470  575  740  960 1250
            250 -13 -21 .  4 17 31 50  84 140 196 284 340 425 520  640  820 1050 1350
            280 -16 -26 .  4 20 34 56  94 158 218 315 385 475 580  710  920 1200 1550
            315 -16 -26 .  4 20 34 56  98 170 240 350 425 525 650  790 1000 1300 1700
            355 -18 -28 .  4 21 37 62 108 190 268 390 475 590 730  900 1150 1500 1900
            400 -18 -28 .  4 21 37 62 114 208 294 435 530 660 820 1000 1300 1650 2100
            450 -20 -32 .  5 23 40 68 126 232 330 490 595 740 920 1100 1450 1850 2400
            500 -20 -32 .  5 23 40 68 132 252 360 540 660 820 1000 1250 1600 2100 2600
            """;

    private static final DeviationTable UPPER = DeviationTable.of(BELOW);
    private static final DeviationTable LOWER = DeviationTable.of(ABOVE);
    private static final int COARSEST_OF_J = 8;

    private ShaftDeviations() {}

    /** How far es stands below the nominal size, micrometres; letters a to g. */
    static OptionalDouble below(String letters, double sizeMm) {
        return sizeMm <= 1 && (letters.equals("a") || letters.equals("b"))
                ? OptionalDouble.empty()
                : UPPER.micrometres(letters, sizeMm);
    }

    /** How far ei stands above the nominal size for k (of grades 4 to 7) to zc, micrometres. */
    static OptionalDouble above(String letters, double sizeMm) {
        return LOWER.micrometres(letters, sizeMm);
    }

    /** ei of j, micrometres; grades 5 to 8. */
    static OptionalDouble ofJ(int grade, double sizeMm) {
        return grade > COARSEST_OF_J
                ? OptionalDouble.empty()
                : LOWER.micrometres("j" + (grade == 5 ? 6 : grade), sizeMm);
    }
}
