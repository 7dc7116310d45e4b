using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using PatternStudio.Studio.Designs;

namespace PatternStudio.Studio.Data.Configuration;

internal sealed class DesignFaceConfiguration : IEntityTypeConfiguration<DesignFace>
{
    public void Configure(EntityTypeBuilder<DesignFace> face)
    {
        face.ToTable("DesignFaces");
        face.HasKey(it => it.DesignId);
        face.Property(it => it.DesignId).ValueGeneratedNever();
        face.Property(it => it.Sizes).HasMaxLength(DesignFace.SizesLength);
        face.HasOne<Design>().WithOne().HasForeignKey<DesignFace>(it => it.DesignId).OnDelete(DeleteBehavior.Cascade);
    }
}
